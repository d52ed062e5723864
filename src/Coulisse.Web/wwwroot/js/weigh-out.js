// @ts-check
// <weigh-out>: one weight at a time in huge figures. All acts are a log that is folded; the log is kept, so a reload changes nothing.
import { el } from './dom.js';
import { fold, grams, makeLog } from './weigh-log.js';

const TWICE = 400; // ms: a wet thumb that touches twice ticks once

class WeighOut extends HTMLElement {
  connectedCallback() {
    if (this.lines) return;
    this.rows = /** @type {HTMLElement[]} */ (Array.from(document.querySelectorAll('tr[data-line]')));
    this.lines = this.rows.map((r) => ({ ...r.dataset, key: r.dataset.line ?? '', grams: Number(r.dataset.grams), known: r.dataset.known === 'yes' }));
    if (!this.lines.length) return;
    this.log = makeLog(`coulisse.weigh.${this.dataset.key}`, localStorage);
    this.lay();
    this.rows.forEach((r, n) => { r.addEventListener('click', () => this.go(n)); });
    document.addEventListener('keydown', (e) => this.key(e));
    this.awake();
    document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') this.awake(); });
    this.at = this.log.all.length ? this.first() : 0;
    this.show();
  }

  /** Keeps the screen on where a browser allows it (secure contexts only); elsewhere the tablet's own setting decides. */
  awake() { /** @type {any} */ (navigator).wakeLock?.request('screen').catch(() => { /* refused on low battery: the page still works */ }); }

  first() { const s = fold(this.log.all, this.lines); const n = this.lines.findIndex((l) => !s.done.has(l.key)); return n < 0 ? this.lines.length - 1 : n; }

  lay() {
    const part = (/** @type {string} */ c) => el('p', { class: c });
    this.where = part('wo-where'); this.figure = part('wo-figure'); this.food = part('wo-food'); this.detail = part('wo-detail');
    this.reads = part('wo-reads'); this.next = part('wo-next');
    this.said = el('p', { class: 'away', role: 'status' });
    this.bar = el('progress', { max: this.lines.length, value: 0, 'aria-label': 'Weights done' });
    this.real = el('input', { type: 'number', id: 'wo-real', min: '0', step: 'any', inputmode: 'decimal', autocomplete: 'off' });
    this.tick = el('button', { type: 'button', class: 'main wo-tick', onclick: () => this.ticked() });
    this.back = el('button', { type: 'button', onclick: () => this.go(this.at - 1) }, 'Before');
    this.on = el('button', { type: 'button', onclick: () => this.go(this.at + 1) }, 'Next');
    this.tare = el('button', { type: 'button', onclick: () => { this.log.add({ tare: true }); this.show('The scale is at zero.'); } }, 'Tare');
    this.undo = el('button', { type: 'button', onclick: () => { const last = this.log.undo(); if (last?.key) this.at = this.lines.findIndex((l) => l.key === last.key); this.show('Taken back.'); } }, 'Take back');
    this.again = el('button', { type: 'button', class: 'word', onclick: () => { this.log.clear(); this.at = 0; this.show('From the start.'); } }, 'Start again');
    this.replaceChildren(
      el('section', { class: 'wo-now', 'aria-label': 'This weight' }, this.where, this.figure, this.food, this.detail, this.reads),
      el('div', { class: 'wo-do' }, this.tick, this.tare, this.undo, this.back, this.on),
      el('div', { class: 'wo-more' }, el('div', { class: 'field' }, el('label', { for: 'wo-real' }, 'On the scale it was, g'), this.real), this.next), this.bar,
      el('p', { class: 'soft small' }, this.count = el('span', {}), ' ', this.again), this.said);
  }

  /** @param {number} n */
  go(n) { if (n < 0 || n >= this.lines.length) return; this.at = n; this.real.value = ''; this.show(); scrollTo({ top: 0 }); }

  ticked() {
    const now = performance.now();
    if (now - (this.last ?? -TWICE) < TWICE) return;
    this.last = now;
    const line = this.lines[this.at];
    const s = fold(this.log.all, this.lines);
    if (s.done.has(line.key)) { this.log.add({ key: line.key, off: true }); this.show(`${line.food} is open again.`); return; }
    const typed = Number(String(this.real.value).replace(',', '.'));
    const real = this.real.value !== '' && Number.isFinite(typed) && typed >= 0 ? typed : null;
    if (!line.known && real === null) { this.real.focus(); this.show('There is no weight for this. Weigh what you take and write it in, then tick.'); return; }
    this.log.add({ key: line.key, grams: real ?? line.grams });
    this.real.value = '';
    this.at = this.first();
    const left = this.lines[this.at];
    this.show(fold(this.log.all, this.lines).done.size === this.lines.length ? 'All is weighed.' : `${line.food} done. Next ${left.figure} g ${left.food}.`);
  }

  /** @param {string} [says] */
  show(says) {
    const s = fold(this.log.all, this.lines);
    const line = this.lines[this.at];
    const done = s.done.has(line.key);
    const mates = this.lines.filter((l) => l.part === line.part);
    this.where.textContent = `${line.part ? line.part + ', ' : ''}${mates.indexOf(line) + 1} of ${mates.length}`;
    this.figure.replaceChildren(el('b', {}, line.figure), ' g');
    this.figure.classList.toggle('unknown', !line.known);
    this.food.textContent = line.food ?? '';
    this.detail.textContent = [line.detail, line.sure ? `${line.sure}${line.range ? ` (${line.range})` : ''}` : ''].filter(Boolean).join('; ');
    this.reads.replaceChildren(...(done ? [el('b', {}, `${grams(s.done.get(line.key) ?? 0)} g weighed. `), `On the scale ${grams(s.total)} g`] : ['On the scale ', el('b', {}, `${grams(s.total)} g`), line.known ? [', then ', el('b', {}, `${grams(s.total + line.grams)} g`)] : ''].flat()));
    const before = this.lines[this.at - 1];
    if (!done && before && before.part !== line.part && s.total > 0) this.reads.append('. A new part: change the bowl and tare.');
    this.tick.textContent = done ? 'Not weighed after all' : 'Weighed';
    this.tick.classList.toggle('main', !done);
    const left = this.lines.filter((l) => !s.done.has(l.key) && l !== line)[0];
    this.next.textContent = left ? `Then: ${left.figure} g ${left.food}` : '';
    this.undo.toggleAttribute('disabled', !this.log.all.length);
    this.back.toggleAttribute('disabled', this.at === 0);
    this.on.toggleAttribute('disabled', this.at === this.lines.length - 1);
    this.bar.value = s.done.size;
    this.count.textContent = s.done.size === this.lines.length ? `All ${this.lines.length} are weighed.` : `${s.done.size} of ${this.lines.length} are weighed.`;
    this.rows.forEach((r, n) => {
      const mine = this.lines[n]; const is = s.done.has(mine.key);
      r.classList.toggle('done', is); r.classList.toggle('here', n === this.at);
      const cell = /** @type {HTMLElement} */ (r.querySelector('.wo-state'));
      const real = s.done.get(mine.key);
      cell.textContent = is ? (mine.known && Math.abs((real ?? 0) - mine.grams) < mine.grams * 1e-6 + 1e-9 ? 'weighed' : `${grams(real ?? 0)} g weighed`) : n === this.at ? 'now' : '';
    });
    if (says) this.said.textContent = says;
  }

  /** @param {KeyboardEvent} e */
  key(e) {
    if (e.altKey || e.ctrlKey || e.metaKey) return;
    const on = /** @type {HTMLElement} */ (e.target);
    if (on.tagName === 'INPUT') { if (e.key === 'Enter') { e.preventDefault(); this.ticked(); } return; }
    if (e.key === 'ArrowRight') this.go(this.at + 1);
    else if (e.key === 'ArrowLeft') this.go(this.at - 1);
    else if (e.key === 'Enter' && on.tagName !== 'BUTTON' && on.tagName !== 'A') this.ticked();
    else return;
    e.preventDefault();
  }
}
customElements.define('weigh-out', WeighOut);
