// @ts-check
// Something is wrong: who went, what broke; and, for the chef and the time-keeper, ways to go on, each already solved.
import { el, post } from './dom.js';

export class Trouble {
  /** @param {any} run the live page @param {string[]} people @param {{code:string,what:string}[]} kit */
  constructor(run, people, kit) {
    this.run = run;
    const w = (/** @type {string} */ k, /** @type {any[]} */ ...x) => run.w(k, ...x);
    this.decides = run.who === '' || run.who === 'Time-keeper';
    this.names = new Map(kit.map((k) => [k.code, `${k.code}, ${k.what.split(/[,;]/)[0]}`]));
    const pick = (/** @type {string} */ id, /** @type {string} */ label, /** @type {string} */ word, /** @type {string} */ kind, /** @type {[string, string][]} */ all) => {
      const which = el('select', { id }, el('option', { value: '' }, '–'), ...all.map(([v, t]) => el('option', { value: v }, t)));
      return el('form', { class: 'row', onsubmit: (/** @type {Event} */ e) => { e.preventDefault(); if (which.value) run.report(kind, which.value); which.value = ''; } },
        el('div', { class: 'field' }, el('label', { for: id }, label), which), el('button', { type: 'submit' }, word));
    };
    this.is = el('ul', { class: 'plain' });
    this.says = el('p', { role: 'status' });
    this.found = el('div', { class: 'lr-found' });
    this.ask = this.decides ? el('button', { type: 'button', class: 'lr-ask', onclick: () => this.find() }, w('findWays')) : null;
    this.root = el('details', { class: 'lr-trouble' }, el('summary', {}, w('wrong')),
      pick('lr-gone', w('whoGone'), w('hasGone'), 'gone', people.map((p) => [p, p])), kit.length ? pick('lr-broken', w('whatBroke'), w('isBroken'), 'broken', [...this.names]) : null,
      this.is, this.ask, this.says, this.found);
    this.news = el('section', { class: 'lr-changes', role: 'status' });
  }

  /** @param {any} frame @param {any[]} waiting */
  show(frame, waiting) {
    const w = (/** @type {string} */ k, /** @type {any[]} */ ...x) => this.run.w(k, ...x);
    const set = (/** @type {string} */ kind, /** @type {string[]} */ held) => { const s = new Set(held); for (const r of waiting) if (r.kind === kind) s.add(r.subject); else if (r.kind === 'undo') s.delete(r.subject); return [...s]; };
    const gone = set('gone', frame.gone); const broken = set('broken', frame.broken);
    const lost = frame.tasks.filter((/** @type {any} */ t) => t.state === 'lost').length;
    const key = JSON.stringify([gone, broken, lost, frame.planId, this.read]);
    if (key === this.said) return;
    this.said = key;
    const row = (/** @type {string} */ id, /** @type {string} */ text) => el('li', {}, el('span', {}, text), el('button', { type: 'button', 'aria-label': `${w('notSo')}: ${text}`, onclick: () => this.run.report('undo', id) }, w('notSo')));
    this.is.replaceChildren(...gone.map((p) => row(p, `${p}: ${w('hasGone')}`)), ...broken.map((k) => row(k, `${this.names.get(k) ?? k}: ${w('isBroken')}`)));
    if (gone.length + broken.length + lost > 0 && this.decides) this.root.open = true;
    this.changes(frame);
  }

  /** Only what changed on this person's sheet since the copy in their hand: the plan this page last read, else their printed brief, else the plan the run began with. @param {any} frame */
  changes(frame) {
    this.read ??= this.run.safe(() => localStorage.getItem(`coulisse.read.${this.run.run}`)) ?? '';
    if (this.read !== frame.planId && this.note?.planId !== frame.planId) this.since(frame.planId);
    const w = (/** @type {string} */ k, /** @type {any[]} */ ...x) => this.run.w(k, ...x);
    // without network the last step is still known: what the frame itself says
    const all = this.note?.planId === frame.planId ? this.note.changes : this.away && frame.planSinceMs ? frame.changes : [];
    const mine = this.read === frame.planId ? [] : all.filter((/** @type {any} */ c) => !this.run.who || c.who === this.run.who || this.decides);
    this.news.hidden = !mine.length;
    this.news.replaceChildren(...(this.news.hidden ? [] : [el('h2', {}, this.note?.copy === 'paper' ? w('changedPaper') : frame.planSinceMs ? w('changed', this.run.tasks.clock(frame.planSinceMs)) : w('changedSince')), el('ul', { class: 'plain' }, ...mine.map((/** @type {any} */ c) => el('li', { dir: 'auto' }, this.run.who && !this.decides ? null : el('b', {}, c.who), el('span', {}, c.what)))),
      el('button', { type: 'button', onclick: () => { this.read = frame.planId; this.run.safe(() => localStorage.setItem(`coulisse.read.${this.run.run}`, frame.planId)); this.said = ''; this.show(this.run.frame, this.run.queue.all); } }, w('haveRead'))]));
  }

  /** @param {string} plan */
  async since(plan) {
    if (this.asking === plan) return;
    this.asking = plan;
    const tail = this.run.tail ? `${this.run.tail}&` : '?';
    try {
      const answer = await fetch(`${this.run.api}/changes${tail}since=${encodeURIComponent(this.read)}`, { cache: 'no-store' });
      if (!answer.ok) throw new Error();
      this.note = await answer.json();
      this.away = false;
    } catch { this.away = true; setTimeout(() => { this.asking = ''; this.said = ''; }, 5000); }
    this.said = '';
    this.show(this.run.frame, this.run.queue.all);
  }

  async find() {
    const w = (/** @type {string} */ k, /** @type {any[]} */ ...x) => this.run.w(k, ...x);
    if (this.busy) return;
    this.busy = true;
    this.ask.setAttribute('disabled', '');
    this.says.textContent = w('looking');
    this.found.replaceChildren();
    try {
      await this.run.flush(); // what was just reported must be known before anything is solved
      const all = await post(`${this.run.api}/ways${this.run.tail}`, {});
      this.says.textContent = all.says;
      this.found.replaceChildren(...all.ways.map((/** @type {any} */ way) => el('article', { class: 'lr-way' }, el('p', {}, way.sentence),
        way.changes.length ? el('details', {}, el('summary', {}, w('whatMoves')), el('ul', {}, ...way.changes.map((/** @type {any} */ c) => el('li', {}, el('b', {}, c.who), el('span', {}, c.what))))) : null,
        el('button', { type: 'button', class: 'main', 'aria-label': `${w('takeWay')}: ${way.sentence}`, onclick: () => this.take(way.id) }, w('takeWay')))));
    } catch (e) { this.says.textContent = navigator.onLine === false || !this.run.touch ? w('needsNet') : /** @type {Error} */ (e).message; } finally { this.busy = false; this.ask.removeAttribute('disabled'); }
  }

  /** @param {string} id */
  async take(id) {
    try {
      this.run.take(await post(`${this.run.api}/ways/${id}${this.run.tail}`, {}));
      this.found.replaceChildren();
      this.says.textContent = '';
      this.root.open = false;
      this.said = '';
      this.run.tick();
    } catch (e) { this.says.textContent = /** @type {Error} */ (e).message; }
  }
}
