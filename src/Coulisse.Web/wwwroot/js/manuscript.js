// @ts-check
// <card-manuscript>: the chef's text in the middle; weights and remarks are laid in the margins on the line they speak of.
import { el, post, working } from './dom.js';
import { draft, keepDraft, openRoom } from './draft.js';
import { showMark } from './show-marks.js';
import { MANY, caret, flatLines, isFlat, isGrouped, isPart, lineAt, lineOf, readText, setCaret, writeText } from './lines.js';
import { placeMarks } from './place-marks.js';

const PAUSE = 90; // ms of rest after the last key before the margins are asked for
const MOST = 5 * 1024 * 1024;
const LONG_PAUSE = 1500; // the same for a long text
const LIVE = 200_000; // characters beyond which a text is long: what costs by its length waits for that rest, and typing stays smooth
const REST = 400; // ms of that short rest

class CardManuscript extends HTMLElement {
  connectedCallback() {
    if (this.root) return;
    const form = /** @type {HTMLFormElement} */ (this.querySelector('form'));
    this.area = /** @type {HTMLTextAreaElement} */ (form.querySelector('textarea'));
    this.form = form;
    this.root = el('div', { class: 'ms-text', contenteditable: 'true', role: 'textbox', 'aria-multiline': 'true', 'aria-label': 'The card', 'data-hint': this.area.placeholder, spellcheck: 'false', autocapitalize: 'off', tabindex: '0' });
    this.left = el('div', { class: 'ms-left', role: 'group', 'aria-label': 'Weights, by line' });
    this.right = el('div', { class: 'ms-right', role: 'group', 'aria-label': 'Remarks, by line' });
    this.sheet = el('div', { class: 'ms' }, this.left, this.root, this.right);
    this.state = el('p', { class: 'ms-state', role: 'status' });
    this.refused = el('p', { class: 'ms-refused', role: 'alert' });
    this.whole = el('div', { class: 'ms-whole' });
    this.area.hidden = true;
    form.querySelector('.without-script')?.remove();
    this.caution = el('p', { class: 'soft small' });
    form.before(this.state, this.refused, this.whole, this.sheet, this.caution);
    writeText(this.root, this.area.value);
    this.view = null;
    this.asked = 0;
    this.root.addEventListener('input', () => this.changed());
    this.root.addEventListener('paste', (e) => this.paste(e));
    this.root.addEventListener('beforeinput', (e) => { if (e.inputType.startsWith('format')) e.preventDefault(); });
    this.root.addEventListener('drop', (e) => this.drop(e));
    // Whatever changes the height of text or marks (a window, a finger, an opened working, a font that comes late) places them again before that is painted.
    this.sizes = new ResizeObserver(() => this.place());
    this.sizes.observe(this.root);
    this.heights = new ResizeObserver(() => this.place());
    matchMedia('(pointer: coarse)').addEventListener('change', () => this.place()); // lines are higher under a finger
    document.fonts?.addEventListener('loadingdone', () => this.place()); // a face that is first needed in a margin comes after the page's own
    /** What was changed since it was last asked: of a long text only that is looked at. */
    this.edits = new MutationObserver(() => {});
    this.edits.observe(this.root, { childList: true, characterData: true, subtree: true });
    for (const c of document.querySelectorAll('[data-margins]')) { c.addEventListener('input', () => this.soon()); c.addEventListener('keydown', (e) => { if (/** @type {KeyboardEvent} */ (e).key === 'Enter') e.preventDefault(); }); }
    document.addEventListener('keydown', (e) => { if (e.key === 'Escape') this.closeWeight(); });
    document.addEventListener('click', (e) => { if (this.opened && !/** @type {Node} */ (e.target).isConnected) return; if (this.opened && !this.left.contains(/** @type {Node} */ (e.target))) this.closeWeight(); });
    this.drafts = !this.dataset.card;
    if (this.drafts) openRoom().catch(() => {}); // where there is none, a long text says so when it is put away
    form.addEventListener('submit', () => { this.sync(); this.area.value = this.text; }); // what still waits for a rest goes along
    addEventListener('pagehide', () => { if (this.joined === undefined) this.sync(); });
    addEventListener('beforeunload', (e) => { if (this.unkept && !this.sent) e.preventDefault(); });
    form.addEventListener('submit', () => { this.sent = true; });
    // what was kept as a card is no draft any more
    if (!this.drafts) Promise.resolve(draft()).then((t) => { if (t && t.trim() === this.area.value.trim()) keepDraft(''); });
    const kept = this.drafts && !this.area.value.trim() ? draft() : '';
    if (typeof kept === 'string') this.restore(kept);
    else { this.drafts = false; kept.then((t) => { this.drafts = true; this.restore(t); this.blank(); this.sync(); this.ask(); }); } // an empty desk must not overwrite what is still being fetched
    this.blank();
    this.sync();
    this.ask();
  }

  /** @param {string} kept */
  restore(kept) { if (kept && this.root.textContent === '') { this.write(kept); this.restored = true; this.say(''); } }

  /** Says how the reading stands; where the text came from stays beside it until the text changes. @param {string} words */
  say(words) { this.state.textContent = [this.restored ? 'Your unsaved text from last time.' : '', words].filter(Boolean).join(' '); }

  disconnectedCallback() { this.sizes?.disconnect(); this.heights?.disconnect(); this.edits?.disconnect(); }

  /** @template T @param {() => T} f @returns {T|null} */
  safe(f) { try { return f(); } catch { return null; } }

  // joined once after a change, however often it is asked for
  get text() { return this.joined ??= isFlat(this.root) ? flatLines(this.root).join('\n') : readText(this.root); }

  set text(t) {
    this.write(t);
    if (t.length > LIVE && this.drafts) this.keep(t); // drawing a long text takes a while, and the page may be left before it ends
    this.changed();
  }

  /** Sets the lines; they are flat. @param {string} t */
  write(t) { writeText(this.root, t); this.joined = undefined; this.edits?.takeRecords(); }

  /** Whether every line that was touched since it was last asked is still one line. */
  flatWhereTouched() {
    const touched = new Set();
    for (const m of this.edits.takeRecords()) {
      const line = m.target === this.root ? null : lineOf(this.root, m.target);
      if (line) touched.add(line); // null for a stretch, too: what came into it is looked at by itself
      for (const n of m.addedNodes) if (n.parentNode === this.root || n.parentNode?.parentNode === this.root) touched.add(n);
    }
    for (const n of touched) if (n.isConnected && !isPart(n)) return false;
    return this.root.childElementCount > 0;
  }

  /** Everything that follows a change of the text. */
  changed() {
    if (this.refused.textContent) this.refused.textContent = ''; // what was refused is history once something was taken
    this.restored = false;
    this.joined = undefined;
    if (!this.flatWhereTouched()) {
      const at = caret(this.root);
      this.write(readText(this.root));
      if (at !== null) setCaret(this.root, at);
    }
    this.blank();
    clearTimeout(this.later);
    if (this.long) this.later = setTimeout(() => this.place(), REST); // its text is joined, put away and read when the writer rests longer
    else { this.sync(); requestAnimationFrame(() => this.place()); }
    this.soon();
  }

  get long() { return this.root.childElementCount > MANY || isGrouped(this.root) || (this.size ?? 0) > LIVE; }

  blank() { this.root.classList.toggle('blank', this.root.childElementCount < 2 && this.root.textContent === ''); }

  sync() {
    const text = this.text;
    this.size = text.length;
    if (!this.long) this.area.value = text;
    if (this.drafts && text !== this.put) this.keep(text);
  }

  /** Puts the text away in the browser. @param {string} text */
  keep(text) {
    this.put = text;
    keepDraft(text).then((kept) => {
      this.unkept = !kept;
      if (!kept) { this.put = undefined; this.refused.textContent = 'The browser has no room to keep this text. Keep the card before you leave this page.'; }
    });
  }

  /** @param {ClipboardEvent} e */
  paste(e) {
    e.preventDefault();
    const t = (e.clipboardData?.getData('text/plain') ?? '').replaceAll('\r\n', '\n');
    if (!t) { this.refused.textContent = 'There is no text on the clipboard (a picture cannot be read). Nothing was changed.'; return; }
    this.insert(t);
  }

  /** @param {DragEvent} e */
  async drop(e) {
    const file = e.dataTransfer?.files[0];
    if (!file) return;
    e.preventDefault();
    if (file.size > MOST) { this.refused.textContent = `${file.name} is ${Math.round(file.size / 1048576)} MB; a card is 5 MB at most. Nothing was changed.`; return; }
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (bytes.subarray(0, 4096).includes(0)) { this.refused.textContent = `${file.name} is not a text (a picture, a PDF or a program?). Drop a text, Markdown, HTML or JSON file. Nothing was changed.`; return; }
    const text = new TextDecoder().decode(bytes);
    if (this.root.textContent === '') this.text = text;
    else { this.root.focus(); this.insert(text); }
  }

  /** Puts text where the caret is. @param {string} t */
  insert(t) {
    if (t.length + this.text.length > MOST) { this.refused.textContent = 'That is more than 5 MB; a card is 5 MB at most. Nothing was changed.'; return; }
    if (t.length < 2000 && document.execCommand('insertText', false, t)) return;
    // a long paste by the browser's own command is slow and leaves nested boxes: do it in the text
    const at = caret(this.root) ?? this.text.length;
    const s = document.getSelection();
    let until = at;
    if (s && !s.isCollapsed && this.root.contains(s.anchorNode)) {
      const chosen = s.toString().replaceAll('\r', '').length;
      const r = s.getRangeAt(0).cloneRange(); r.collapse(true); s.removeAllRanges(); s.addRange(r);
      const from = caret(this.root) ?? at; until = from + chosen;
      return this.splice(from, Math.min(until, this.text.length), t);
    }
    this.splice(at, until, t);
  }

  /** @param {number} from @param {number} until @param {string} t */
  splice(from, until, t) {
    const old = this.text;
    this.text = old.slice(0, from) + t + old.slice(until);
    setCaret(this.root, from + t.length);
  }

  soon() {
    clearTimeout(this.timer);
    const long = this.long;
    if (long && !this.waits) { this.waits = true; this.say('A long text: the margins follow when you rest.'); }
    this.timer = setTimeout(() => { if (long) this.sync(); this.ask(); }, long ? LONG_PAUSE : PAUSE);
  }

  async ask() {
    this.waits = false;
    const text = this.text;
    if (!text.trim()) { this.lay(null); this.state.textContent = this.state.textContent || ''; return; }
    this.giveUp?.abort();
    this.giveUp = new AbortController();
    const turn = ++this.asked;
    const slow = setTimeout(() => this.say('Reading …'), 400);
    try {
      const view = await post('/api/margins', { text, card: this.dataset.card, left: this.leftAlone, ...this.options() }, this.giveUp.signal);
      if (turn !== this.asked) return;
      this.say(view.summary);
      this.lay(view);
    } catch (e) {
      if (/** @type {Error} */ (e).name === 'AbortError') return;
      this.say(/** @type {Error} */ (e).message.startsWith('Failed to fetch') ? 'The bench does not answer. Your text is kept here; the margins follow when it does.' : /** @type {Error} */ (e).message);
      this.retry = setTimeout(() => this.ask(), 3000);
    } finally { clearTimeout(slow); }
  }

  options() {
    /** @type {Record<string, string>} */
    const o = {};
    for (const c of /** @type {NodeListOf<HTMLInputElement>} */ (document.querySelectorAll('[data-margins]'))) o[c.dataset.margins ?? ''] = c.value;
    return o;
  }

  /** Lays a view into the margins. @param {any} view */
  lay(view) {
    this.view = view;
    const focus = /** @type {HTMLElement|null} */ (document.activeElement)?.dataset?.key;
    this.closeWeight();
    const left = [];
    const right = [];
    this.sheet.classList.toggle('scaled', Boolean(view?.scaledFor));
    for (const line of view?.lines ?? []) {
      line.weights.forEach((/** @type {any} */ w, /** @type {number} */ i) => left.push(this.weight(line.line, w, i, line.weights.length)));
      line.remarks.forEach((/** @type {any} */ r, /** @type {number} */ i) => right.push(this.remark(line.line, r, i)));
    }
    const shown = new Map((view?.shown ?? []).map((/** @type {any} */ s) => [s.line, s.how]));
    for (const n of view?.steps ?? []) left.push(showMark(this, n, shown.get(n) ?? ''));
    this.left.replaceChildren(...left);
    this.right.replaceChildren(...right);
    this.heights.disconnect();
    for (const m of right) this.heights.observe(m);
    this.whole.replaceChildren(...(view?.whole ?? []).map((/** @type {any} */ r, /** @type {number} */ i) => this.remark(0, r, i)),
      ...(view?.faults ?? []).map((/** @type {string} */ f) => el('p', { class: 'word-warn' }, f)),
      ...(view?.loose ?? []).map((/** @type {string} */ t) => el('p', {}, `Marked as shown, but no longer on the card: “${t}”.`)),
      view?.waiting ? el('p', {}, view.waitingSays, ' ', el('button', { type: 'button', class: 'word', onclick: () => { this.showAll = !this.showAll; this.lay(this.view); } }, this.showAll ? 'Ask the first three only' : 'Show them')) : '');
    if (focus) /** @type {HTMLElement|null} */ (this.querySelector(`[data-key="${CSS.escape(focus)}"]`))?.focus();
    const says = document.querySelector('[data-scaled]');
    if (says) says.textContent = view?.scaledFor ? `${view.scaledFor}, ${view.factor}` : '';
    this.caution.textContent = view?.caution ?? '';
    this.place();
    document.dispatchEvent(new CustomEvent('margins', { detail: view }));
  }

  /** @param {number} line @param {any} w @param {number} i @param {number} of */
  weight(line, w, i, of) {
    const b = el('button', { type: 'button', class: `w ${w.grade}${w.scaled ? ' two' : ''}`, 'data-line': line, 'data-key': `w${line}.${i}`, 'aria-expanded': 'false', 'aria-label': `${w.food}: ${w.grams}${w.scaled ? `, scaled ${w.scaled}` : ''}, ${w.grade}. Open the working.`, onclick: () => this.openWeight(b, w) },
      el('span', { class: 'was g' }, w.grade === 'estimated' || w.grade === 'converted' ? '≈ ' : '', w.grams), w.scaled ? el('b', { class: 'now' }, w.scaled) : null);
    b.shift = of > 1 ? i : 0;
    return b;
  }

  /** @param {any} b @param {any} w */
  openWeight(b, w) {
    const mine = b.getAttribute('aria-expanded') === 'true';
    this.closeWeight();
    if (mine) return;
    b.setAttribute('aria-expanded', 'true');
    this.opened = el('div', { class: 'open-weight' },
      el('p', {}, el('b', {}, w.food), ': ', w.grams, w.range ? ` (${w.range})` : '', w.scaled ? `; scaled ${w.scaled}` : '', w.rounding ? `, ${w.rounding}` : '', '. ', el('i', {}, w.grade), '.'),
      working(w.working));
    this.opened.style.top = `${b.offsetTop + b.offsetHeight}px`;
    b.after(this.opened);
  }

  closeWeight() {
    this.opened?.remove();
    this.opened = null;
    for (const b of this.left?.querySelectorAll('[aria-expanded=true]') ?? []) b.setAttribute('aria-expanded', 'false');
  }

  /** @param {number} line @param {any} r @param {number} i */
  remark(line, r, i) {
    if (r.waits && !this.showAll) return el('div', { hidden: true, 'data-line': line });
    const more = r.working || r.source;
    return el('div', { class: `r ${r.kind}`, 'data-line': line, onmouseenter: () => this.light(line, true), onmouseleave: () => this.light(line, false) },
      el('p', {}, el('span', { class: 'k' }, r.word, ' '), r.what),
      r.figures ? el('p', { class: 'figs' }, r.figures) : null,
      r.remedy ? el('p', { class: 'remedy' }, r.remedy) : null,
      r.moves ? el('p', { class: 'figs' }, 'It moves ', r.moves) : null,
      r.candidates.length ? el('div', { class: 'pick' }, ...r.candidates.map((/** @type {any} */ c, /** @type {number} */ n) => c.plain.includes('…') ? this.figure(line, i, n, c, r.asked) : el('button', { type: 'button', 'data-key': `r${line}.${i}.${n}`, onclick: () => this.answer(line, c.plain, r.what, r.asked) }, c.text))) : null,
      more ? el('details', {}, el('summary', { 'data-key': `d${line}.${i}` }, r.code ? `working, ${r.code}` : 'working'), r.working ? working(r.working) : null, r.source ? el('p', { class: 'at' }, r.source) : null) : null);
  }

  /** @param {number} line @param {boolean} on */
  light(line, on) { lineAt(this.root, line - 1)?.classList.toggle('lit', on); }

  /** An answer that needs a figure: a field for it, and what is written with it. @param {number} line @param {number} i @param {number} n @param {any} c @param {string} asked */
  figure(line, i, n, c, asked) {
    const [before, after] = c.plain.split('…');
    const field = el('input', { type: 'text', inputmode: 'decimal', autocomplete: 'off', size: '6', 'aria-label': `${c.text}: ${after.trim()}`, 'data-key': `r${line}.${i}.${n}` });
    const write = () => { const figure = field.value.trim(); if (/^[0-9]+([.,][0-9]+)?$/.test(figure)) this.answer(line, before + figure + after, undefined, asked); else field.focus(); };
    field.addEventListener('keydown', (/** @type {KeyboardEvent} */ e) => { if (e.key === 'Enter') { e.preventDefault(); write(); } });
    return el('span', { class: 'figure' }, before, field, ' ', after.trim(), ' ', el('button', { type: 'button', onclick: write }, 'Write it'));
  }

  /** Questions that were left as they are, by this card, in this browser. @returns {string[]} */
  get leftAlone() { return this.safe(() => JSON.parse(localStorage.getItem(`coulisse.left.${this.dataset.card || 'draft'}`) ?? '[]')) ?? []; }

  /** Writes the chosen reading in place of the words asked about; those words themselves mean that the question is left. @param {number} line @param {string} plain @param {string} [question] @param {string} [asked] */
  async answer(line, plain, question, asked) {
    if (question && asked && asked === plain) {
      this.safe(() => localStorage.setItem(`coulisse.left.${this.dataset.card || 'draft'}`, JSON.stringify([...this.leftAlone, question].slice(-100))));
      await this.ask();
      this.state.textContent = `Left as it stands in line ${line}.`;
      return;
    }
    try {
      const { text } = await post('/api/answer', { text: this.text, line, plain, asked });
      this.text = text;
      this.state.textContent = `Written into line ${line}.`;
    } catch (e) { this.state.textContent = /** @type {Error} */ (e).message; }
  }

  /** Puts every mark on the height of its line. */
  place() {
    if (!this.root?.isConnected) return;
    this.dressed = placeMarks({ root: this.root, left: this.left, right: this.right, headings: this.view?.headings ?? [], long: this.long, dressed: this.dressed ?? new Map() });
  }
}
customElements.define('card-manuscript', CardManuscript);
