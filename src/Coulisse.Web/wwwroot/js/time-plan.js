// @ts-check
// <time-plan>: threads of food through people and kit. Built once a zoom; panning only moves it.
import { el, svg } from './dom.js';
import { groundOf, savePng, saveSvg, standalone } from './save-picture.js';
import { lanes, makeAxis, tickStep } from './axis.js';

const LANE = 24; const GAP = 10; const HEAD = 46;
const REST = 350; // ms a finger rests on a task before it takes it
const LOAD = 30; // px of a load under the rows

class TimePlan extends HTMLElement {
  async connectedCallback() {
    if (this.view) return;
    this.says = el('p', { class: 'ms-state', role: 'status' }, 'Drawing …');
    this.append(this.says);
    try {
      const answer = await fetch(this.dataset.from ?? '');
      if (!answer.ok) throw new Error();
      this.view = await answer.json();
    } catch { this.says.textContent = 'The drawing could not be fetched; the tables below say the same.'; return; }
    this.says.textContent = '';
    this.start();
  }

  start() {
    const v = this.view;
    this.origin = new Date(v.origin + 'Z').getTime();
    this.byId = new Map(v.bars.map((/** @type {any} */ b) => [b.id, b]));
    this.names = el('div', { class: 'tp-names', 'aria-hidden': 'true' });
    this.stage = svg('svg', { class: 'tp-draw', role: 'group', 'aria-label': 'Time plan. Arrow keys walk from task to task; the tables below say the same.' });
    this.pane = el('div', { class: 'tp-pane', tabindex: '-1' }, this.stage);
    this.why = el('div', { class: 'tp-why', role: 'status' }, el('p', { class: 'soft' }, 'Touch a task, or walk with the arrow keys: it says why it stands there.' + (this.dataset.edit ? ' Drag it (a finger rests on it first), or move it with Shift and the arrow keys, then pin it: the plan is made again around it.' : '')));
    const zoom = (/** @type {string} */ word, /** @type {() => void} */ f) => el('button', { type: 'button', onclick: f }, word);
    this.tools = el('div', { class: 'row tp-tools', role: 'group', 'aria-label': 'Zoom' },
      zoom('All days', () => this.fit()),
      ...v.stretches.map((/** @type {any} */ s) => zoom(this.day(s), () => this.show(s.from, s.to))),
      v.slotSeconds > 0 ? zoom('The slot', () => this.show(v.slotStart - 60, v.slotStart + v.slotSeconds + 60)) : null,
      zoom('Nearer', () => this.zoom(1.6)), zoom('Further', () => this.zoom(1 / 1.6)));
    const name = v.title.replace(/[^\p{L}\p{N}]+/gu, '-').toLowerCase() || 'plan';
    this.saves = el('div', { class: 'row tp-saves' }, el('button', { type: 'button', class: 'word', onclick: () => saveSvg(this.alone(), name) }, 'Save the drawing (SVG)'), el('button', { type: 'button', class: 'word', onclick: () => savePng(this.alone(), name, groundOf(this)).catch(() => { this.says.textContent = 'The picture could not be made; the SVG holds the same.'; }) }, 'Save the drawing (PNG)'));
    this.replaceChildren(this.tools, el('div', { class: 'tp' }, this.names, this.pane), this.saves, this.says, this.why);
    this.sizes = new ResizeObserver(() => { const w = this.pane.clientWidth; if (w !== this.wide) { this.wide = w; this.fitted ? this.fit() : this.build(this.axis.scale); } });
    this.sizes.observe(this.pane);
    this.pane.addEventListener('wheel', (/** @type {WheelEvent} */ e) => { if (!e.ctrlKey) return; e.preventDefault(); this.zoom(e.deltaY < 0 ? 1.25 : 0.8, e.offsetX); }, { passive: false });
    // once a finger holds a task, the page must not pan under it, nor open a menu
    this.stage.addEventListener('touchmove', (/** @type {TouchEvent} */ e) => { if (this.held) e.preventDefault(); }, { passive: false });
    this.stage.addEventListener('contextmenu', (/** @type {Event} */ e) => { if (this.held) e.preventDefault(); });
    this.stage.addEventListener('keydown', (/** @type {KeyboardEvent} */ e) => this.key(e));
    this.fit();
  }

  /** The drawing with the names of its rows, to be saved. */
  alone() {
    const copy = standalone(this.stage);
    const side = this.names.getBoundingClientRect().width + 10;
    const moved = svg('g', { transform: `translate(${side} 0)` }, ...copy.childNodes);
    copy.replaceChildren(moved, ...Array.from(this.names.children, (/** @type {any} */ n) => { const s = getComputedStyle(n); return svg('text', { x: side - 10, y: n.offsetTop + n.offsetHeight / 2 + 5, 'text-anchor': 'end', fill: s.color, 'font-size': s.fontSize, 'font-family': s.fontFamily }, n.textContent); }));
    copy.setAttribute('width', String(Number(copy.getAttribute('width')) + side));
    return copy;
  }

  disconnectedCallback() { this.sizes?.disconnect(); }

  /** @param {number} t seconds @param {Intl.DateTimeFormatOptions} how */
  word(t, how) { return new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', hourCycle: 'h23', ...how }).format(this.origin + t * 1000); }

  /** @param {any} s */
  day(s) {
    const same = this.view.stretches.filter((/** @type {any} */ o) => this.word(o.from, { day: 'numeric' }) === this.word(s.from, { day: 'numeric' })).length > 1;
    return this.word(s.from + 900, { weekday: 'short', day: 'numeric', ...(same ? { hour: '2-digit', minute: '2-digit' } : {}) });
  }

  fit() {
    const breaks = (this.view.stretches.length - 1) * 34;
    const all = this.view.stretches.reduce((/** @type {number} */ n, /** @type {any} */ s) => n + s.to - s.from, 0);
    this.build(Math.max((this.pane.clientWidth - breaks - 4) / Math.max(all, 60), 0.004));
    this.fitted = true;
  }

  /** @param {number} from @param {number} to */
  show(from, to) {
    this.build(Math.max(this.pane.clientWidth - 4, 200) / Math.max(to - from, 30));
    this.pane.scrollLeft = this.axis.at(from);
    this.fitted = false;
  }

  /** @param {number} by @param {number} [at] */
  zoom(by, at) {
    const x = at ?? this.pane.clientWidth / 2;
    const t = this.axis.second(this.pane.scrollLeft + x);
    this.build(Math.min(Math.max(this.axis.scale * by, 0.003), 4));
    this.pane.scrollLeft = this.axis.at(t) - x;
    this.fitted = false;
  }

  /** Builds the drawing at a scale. @param {number} scale px a second */
  build(scale) {
    const v = this.view;
    const axis = this.axis = makeAxis(v.stretches, scale);
    const width = Math.max(axis.width, 60);
    let y = HEAD;
    /** @type {Map<string, any>} */ const rows = new Map();
    const names = [];
    let kind = '';
    for (const r of v.rows) {
      if (kind && kind !== r.kind) y += 14;
      kind = r.kind;
      const mine = v.bars.filter((/** @type {any} */ b) => b.rows.includes(r.id));
      // a moment shares its task's lane in a kit's row; a person's moments are work like any other
      const packed = lanes(r.kind === 'kit' ? mine.filter((/** @type {any} */ b) => b.kind !== 'moment') : mine);
      rows.set(r.id, { y, lanes: packed.lane, count: packed.lanes, bars: mine, kind: r.kind });
      const height = packed.lanes * LANE + GAP;
      const name = el('span', { class: `tp-name ${r.kind}`, title: r.what ? `${r.name} ${r.what}` : r.name }, el('span', {}, r.name, r.what ? el('i', {}, ` ${r.what}`) : null));
      name.style.top = `${y}px`; name.style.height = `${packed.lanes * LANE}px`;
      names.push(name);
      y += height;
    }
    const loads = this.loadRows(axis, y + 16, names);
    const height = loads.until + 6;
    this.names.replaceChildren(...names);
    this.names.style.height = `${height}px`;
    this.stage.setAttribute('width', String(Math.ceil(width)));
    this.stage.setAttribute('height', String(height));
    const all = document.createDocumentFragment();
    all.append(this.patterns(), this.ticks(axis, height), this.slot(axis, height));
    for (const [id, r] of rows) all.append(svg('line', { x1: 0, x2: width, y1: r.y + r.count * LANE + GAP / 2, y2: r.y + r.count * LANE + GAP / 2, class: `tp-rule ${id[0]}` }));
    this.knots = new Map();
    const bars = document.createDocumentFragment();
    /** @type {any[]} */ this.order = [];
    for (const [id, r] of rows) for (const b of r.bars) bars.append(this.bar(axis, b, r, id));
    for (const t of v.threads) all.append(this.thread(axis, t));
    all.append(bars, loads.drawn);
    for (const w of v.twins) all.append(this.twin(axis, w, height));
    this.stage.replaceChildren(all);
    const first = this.order.find((o) => o.dataset.id === this.chosen) ?? this.order[0];
    if (first) first.setAttribute('tabindex', '0');
    this.light();
  }

  patterns() {
    return svg('defs', {},
      svg('pattern', { id: 'tp-ruled', width: 6, height: 6, patternUnits: 'userSpaceOnUse' }, svg('line', { x1: 0, x2: 6, y1: 1, y2: 1, class: 'tp-ink' }), svg('line', { x1: 0, x2: 6, y1: 4, y2: 4, class: 'tp-ink thin' })),
      svg('pattern', { id: 'tp-dots', width: 5, height: 5, patternUnits: 'userSpaceOnUse' }, svg('circle', { cx: 2.5, cy: 2.5, r: 1, class: 'tp-dot' })));
  }

  /** @param {any} axis @param {number} height */
  ticks(axis, height) {
    const g = svg('g', { class: 'tp-ticks', 'aria-hidden': 'true' });
    const step = tickStep(axis.scale, 54);
    const zero = ((this.origin / 1000) % 86400 + 86400) % 86400;
    for (const p of axis.parts) {
      g.append(svg('text', { x: p.x + 2, y: 14, class: 'tp-day' }, this.word(p.from + 900, p.width > 190 ? { weekday: 'long', day: 'numeric', month: 'long' } : { weekday: 'short', day: 'numeric' })));
      const first = Math.ceil((p.from + zero) / step) * step - zero;
      for (let t = first; t <= p.to; t += step) {
        const x = axis.at(t);
        g.append(svg('line', { x1: x, x2: x, y1: 34, y2: height, class: 'tp-tick' }));
        if (x + 40 < p.x + p.width || t === first) g.append(svg('text', { x: x + 3, y: 32, class: 'tp-hour' }, this.word(t, step < 60 ? { hour: '2-digit', minute: '2-digit', second: '2-digit' } : { hour: '2-digit', minute: '2-digit' })));
      }
      g.append(svg('path', { d: `M${p.x + p.width} 18V${height}`, class: 'tp-break' }));
    }
    return g;
  }

  /** @param {any} axis @param {number} height */
  slot(axis, height) {
    const v = this.view;
    if (!v.slotSeconds) return svg('g');
    const x = axis.at(v.slotStart); const w = Math.max(axis.at(v.slotStart + v.slotSeconds) - x, 2);
    const g = svg('g', { class: 'tp-slot', 'aria-hidden': 'true' }, svg('rect', { x, y: 18, width: w, height: height - 20 }));
    if (w > 300) for (const s of v.segments) {
      const sx = axis.at(v.slotStart + s.startSecond);
      g.append(svg('line', { x1: sx, x2: sx, y1: 34, y2: height, class: s.gate ? 'tp-gate' : 'tp-segment' }), svg('text', { x: sx + 2, y: 44, class: 'tp-hour' }, String(s.number)));
    }
    return g;
  }

  /** Loads of circuits, shelves and trays under the rows: how full, against a line that is the limit. @param {any} axis @param {number} y @param {any[]} names */
  loadRows(axis, y, names) {
    const drawn = svg('g', { class: 'tp-loads', 'aria-hidden': 'true' });
    for (const l of this.view.loads ?? []) {
      const most = Math.max(l.limit, ...l.steps.map((/** @type {any} */ s) => s.amount)) || 1;
      // on a narrow screen the code stands alone; the key under the drawing says what it is
      const [code, ...rest] = l.title.startsWith('Circuit ') ? [l.title.slice(8), 'circuit'] : l.title.split(' ');
      const name = el('span', { class: 'tp-name load' }, el('span', {}, code, el('i', {}, ` ${rest.join(' ')}`)));
      name.style.top = `${y}px`; name.style.height = `${LOAD}px`; name.title = `${l.title}: ${l.peak}`;
      names.push(name);
      for (const s of l.steps) {
        const h = Math.max(1, s.amount / most * (LOAD - 4)); const x = axis.at(s.from);
        drawn.append(svg('rect', { x, y: y + LOAD - h, width: Math.max(axis.at(s.to) - x, 1), height: h, class: s.amount > l.limit + 1e-9 ? 'over' : '' }));
      }
      const top = y + LOAD - l.limit / most * (LOAD - 4);
      drawn.append(svg('line', { x1: 0, x2: axis.width, y1: top, y2: top }));
      y += LOAD + 8;
    }
    return { drawn, until: y };
  }

  /** @param {any} axis @param {any} b @param {any} r @param {string} row */
  bar(axis, b, r, row) {
    const host = row[0] === 'k' && b.kind === 'moment' ? r.bars.find((/** @type {any} */ o) => o.start <= b.start && o.end >= b.end && o.kind !== 'moment') : b;
    const y = r.y + (r.lanes.get(host ?? b) ?? 0) * LANE;
    const x = axis.at(b.start); const w = Math.max(axis.at(b.end) - x, 3); const h = LANE - 4;
    const set = row[0] === 'k' && b.celsius ? b.celsius + ' ' : '';
    const g = svg('g', { class: `tp-bar ${b.kind}`, role: 'button', tabindex: '-1', 'data-id': b.id, 'data-row': row, 'aria-label': `${set}${b.text}. ${b.when}, ${b.lasts}. ${b.people || b.kit}${b.pinned ? '. Fixed by hand' : ''}` });
    g.append(svg('rect', { x, y: y - 1, width: Math.max(w, 8), height: h + 2, class: 'hit' }));
    if (b.kind === 'heat') g.append(svg('path', { d: `M${x} ${y + h}L${x + w} ${y}V${y + h}Z`, class: 'body' }));
    else if (b.kind === 'moment' && row[0] === 'k') g.append(svg('path', { d: `M${x + w / 2} ${y - 1}l5 ${h / 2}l-5 ${h / 2}l-5 ${-h / 2}Z`, class: 'body' }));
    else g.append(svg('rect', { x, y, width: w, height: h, class: 'body' }));
    const label = set + b.text;
    // words end before the next moment of hands, and begin behind one at the very start
    const hands = row[0] === 'k' ? (b.moments ?? []).map((/** @type {number} */ m) => axis.at(b.start + m) - x) : [];
    const lead = hands.some((/** @type {number} */ m) => m < 6) ? 6 : 0;
    const room = Math.floor((Math.min(w, ...hands.filter((/** @type {number} */ m) => m >= 6).map((/** @type {number} */ m) => m - 4)) - 8 - lead) / 6.4);
    if (room > 3 && b.kind !== 'moment') {
      // whole words only: what is seen is then part of what is spoken
      const text = label.length > room ? label.slice(0, room + 1).replace(/\s*\S*$/, '') : label;
      const t = svg('text', { x: x + 4 + lead, y: y + h - 6, class: 'tp-label', 'aria-hidden': 'true' }, text);
      if (text && (b.kind === 'alone' || b.kind === 'heat' || b.kind === 'wash')) g.append(svg('rect', { x: x + 2 + lead, y: y + 3, width: Math.min(text.length * 6.4 + 4, w - 3), height: h - 6, class: 'tp-under' }));
      if (text) g.append(t);
    }
    if (b.slack > 0 && row[0] === 'p') { const tail = Math.min(axis.at(b.end + b.slack) - x - w, 400); if (tail > 3) g.append(svg('line', { x1: x + w, x2: x + w + tail, y1: y + h / 2, y2: y + h / 2, class: 'tp-slack' })); }
    if (b.pinned) g.append(svg('path', { d: `M${x - 4} ${y - 3}h8l-4 6Z`, class: 'tp-pin' }));
    if (this.dataset.edit && b.key) g.addEventListener('pointerdown', (/** @type {PointerEvent} */ e) => this.drag(e, b, g));
    g.addEventListener('focus', () => this.tell(b, g));
    g.addEventListener('click', () => { g.focus({ preventScroll: true }); this.tell(b, g); });
    if (!this.knots.has(b.id)) this.knots.set(b.id, { from: [x, y + h / 2], to: [x + w, y + h / 2] });
    this.order.push(g);
    g.place = { x, y };
    return g;
  }

  /** @param {any} axis @param {any} t */
  thread(axis, t) {
    let d = '';
    const g = svg('g', { class: 'tp-thread', 'data-component': t.component, 'aria-hidden': 'true' });
    /** @type {any} */ let last = null;
    for (const id of t.tasks) {
      const k = this.knots.get(id);
      if (!k) continue;
      if (last) { const mid = (last.to[0] + k.from[0]) / 2; d += `M${last.to[0]} ${last.to[1]}C${mid} ${last.to[1]} ${mid} ${k.from[1]} ${k.from[0]} ${k.from[1]}`; }
      g.append(svg('circle', { cx: k.from[0], cy: k.from[1], r: 2.5 }));
      last = k;
    }
    if (d) g.prepend(svg('path', { d }));
    return g;
  }

  /** @param {any} axis @param {any} w @param {number} height */
  twin(axis, w, height) {
    const x = axis.at(this.view.slotStart + w.cueSecond); const near = axis.scale * this.view.slotSeconds > 300;
    const y = near ? height - 12 : 0;
    const g = svg('g', { class: 'tp-twin', 'data-made': w.madeBy ?? '', 'aria-hidden': 'true' });
    const made = w.madeBy ? this.knots.get(w.madeBy) : null;
    if (!near) return g;
    if (made) g.append(svg('path', { d: `M${made.to[0]} ${made.to[1]}C${(made.to[0] + x) / 2} ${made.to[1]} ${x - 40} ${y} ${x} ${y}` }));
    g.append(svg('circle', { cx: x, cy: y, r: 9 }), svg('text', { x, y: y + 4 }, String(w.number)));
    return g;
  }

  /** @param {any} b @param {any} g */
  tell(b, g) {
    for (const o of this.order) o.setAttribute('tabindex', '-1');
    g.setAttribute('tabindex', '0');
    this.chosen = b.id;
    this.light();
    const x = g.place.x;
    if (x < this.pane.scrollLeft || x > this.pane.scrollLeft + this.pane.clientWidth - 20) this.pane.scrollLeft = x - 60;
    const twins = this.view.twins.filter((/** @type {any} */ w) => w.madeBy === b.id);
    this.why.replaceChildren(
      el('p', {}, el('b', {}, b.text)),
      el('p', { class: 'fig' }, `${b.when}, ${b.lasts}`, b.people ? `; ${b.people}` : '', b.kit ? `; ${b.kit}` : '', b.celsius ? ` at ${b.celsius}` : '', b.facts ? `; ${b.facts}` : ''),
      b.because ? el('p', {}, b.because) : el('p', { class: 'soft' }, 'Nothing fixed binds it beyond its place on the card.'),
      twins.length ? el('p', { class: 'fig' }, 'Makes twin ' + twins.map((/** @type {any} */ w) => `${w.number} (${w.component}, ${w.age} old at its cue)`).join(', ')) : null,
      b.component ? el('p', { class: 'soft small' }, b.component, b.line ? `, card line ${b.line}` : '') : null,
      this.dataset.edit && b.key ? this.pinForm(b) : null);
  }

  /** Moment of a second as a form field wants it. @param {number} t */
  field(t) { return new Date(this.origin + t * 1000).toISOString().slice(0, 16); }

  /** Pins a task to a start: the plan is made again around it. @param {any} b */
  pinForm(b) {
    const at = el('input', { type: 'datetime-local', name: 'start', id: 'tp-at', step: 60, value: this.field(this.wanted?.id === b.id ? this.wanted.start : b.start) });
    const form = el('form', { method: 'post', action: this.dataset.edit, class: 'row tp-edit' }, el('input', { type: 'hidden', name: 'task', value: b.key }),
      el('label', { class: 'field', for: 'tp-at' }, el('span', {}, 'Starts at')), at, el('button', { type: 'submit' }, b.pinned ? 'Pin it here instead' : 'Pin it here'));
    if (b.pinned) form.append(el('button', { type: 'submit', onclick: () => { at.value = ''; } }, 'Let go'));
    return form;
  }

  /** Where a task would start: drawn as its outline, filled into the form. @param {any} b @param {number} start */
  want(b, start) {
    this.wanted = { id: b.id, start };
    this.ghost?.remove();
    const here = this.order.find((/** @type {any} */ o) => o.dataset.id === b.id);
    const x = this.axis.at(start);
    this.ghost = svg('rect', { x, y: here.place.y - 2, width: Math.max(this.axis.at(start + b.end - b.start) - x, 6), height: LANE, class: 'tp-ghost' });
    this.stage.append(this.ghost);
    const at = /** @type {HTMLInputElement|null} */ (this.why.querySelector('#tp-at'));
    if (at) at.value = this.field(start);
  }

  /** A mouse grabs at once; a finger that rests on a task for a moment grabs it, one that moves pans the plan. @param {PointerEvent} e @param {any} b @param {any} g */
  drag(e, b, g) {
    if (e.button !== 0 || this.held) return;
    const finger = e.pointerType === 'touch';
    const from = e.clientX; const over = e.clientY; let moved = false; let grabbed = !finger;
    const grab = this.axis.at(b.start);
    const take = () => { moved = true; g.focus({ preventScroll: true }); this.tell(b, g); };
    const rest = finger ? setTimeout(() => { grabbed = true; this.held = b.id; g.classList.add('held'); take(); this.want(b, b.start); }, REST) : 0;
    const move = (/** @type {PointerEvent} */ m) => {
      if (m.pointerId !== e.pointerId) return;
      if (!grabbed) { if (Math.hypot(m.clientX - from, m.clientY - over) > 10) end(); return; }
      if (!moved && Math.abs(m.clientX - from) < 5) return;
      if (!moved) take();
      const second = this.axis.second(grab + m.clientX - from);
      const zero = this.origin / 1000;
      this.want(b, Math.round((second + zero) / 300) * 300 - zero); // to five minutes; the field takes any
    };
    const end = () => { clearTimeout(rest); this.held = null; g.classList.remove('held'); removeEventListener('pointermove', move); removeEventListener('pointerup', end); removeEventListener('pointercancel', end); };
    addEventListener('pointermove', move); addEventListener('pointerup', end); addEventListener('pointercancel', end);
    if (!finger) e.preventDefault();
  }

  light() {
    const b = this.chosen ? this.byId.get(this.chosen) : null;
    for (const o of this.order ?? []) { o.classList.toggle('on', o.dataset.id === this.chosen); o.classList.toggle('kin', Boolean(b && b.component && this.byId.get(o.dataset.id).component === b.component)); }
    for (const t of this.stage.querySelectorAll('.tp-thread')) t.classList.toggle('on', Boolean(b && t.dataset.component === b.component));
    for (const t of this.stage.querySelectorAll('.tp-twin')) t.classList.toggle('on', Boolean(b && t.dataset.made === b.id));
  }

  /** @param {KeyboardEvent} e */
  key(e) {
    const now = /** @type {any} */ (document.activeElement);
    if (!this.order.includes(now)) return;
    let next = null;
    const b = this.byId.get(now.dataset.id);
    if (e.shiftKey && (e.key === 'ArrowRight' || e.key === 'ArrowLeft') && this.dataset.edit && b.key) this.want(b, (this.wanted?.id === b.id ? this.wanted.start : b.start) + (e.key === 'ArrowRight' ? 300 : -300));
    else if (e.key === 'ArrowRight' || e.key === 'ArrowLeft') {
      const row = this.order.filter((o) => o.dataset.row === now.dataset.row).sort((a, c) => a.place.x - c.place.x);
      next = row[row.indexOf(now) + (e.key === 'ArrowRight' ? 1 : -1)];
    } else if (e.key === 'ArrowDown' || e.key === 'ArrowUp') {
      const down = e.key === 'ArrowDown';
      const others = this.order.filter((o) => o.dataset.row !== now.dataset.row && (down ? o.place.y > now.place.y : o.place.y < now.place.y));
      const edge = down ? Math.min(...others.map((o) => o.place.y)) : Math.max(...others.map((o) => o.place.y));
      next = others.filter((o) => o.place.y === edge).sort((a, c) => Math.abs(a.place.x - now.place.x) - Math.abs(c.place.x - now.place.x))[0];
    } else if (e.key === '+') this.zoom(1.6);
    else if (e.key === '-') this.zoom(1 / 1.6);
    else return;
    e.preventDefault();
    next?.focus({ preventScroll: true });
  }
}
customElements.define('time-plan', TimePlan);
