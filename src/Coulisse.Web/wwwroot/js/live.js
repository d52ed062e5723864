// @ts-check
// <live-run>: one person's page of a run. It keeps counting and keeps every tick when the network is gone.
import { el, svg } from './dom.js';
import { clock, laid, lasting, makeQueue, segmentAt } from './queue.js';
import { GateList } from './live-gates.js';
import { TaskList } from './live-tasks.js';
import { Trouble } from './live-trouble.js';

class LiveRun extends HTMLElement {
  async connectedCallback() {
    if (this.run) return;
    this.run = this.dataset.run ?? '';
    this.who = this.dataset.role ?? '';
    this.tail = this.dataset.token ? `?t=${encodeURIComponent(this.dataset.token)}` : '';
    this.api = `/api/live/${this.run}`;
    this.queue = makeQueue(`coulisse.queue.${this.run}`, localStorage, () => Date.now());
    this.offset = 0; this.best = Infinity; this.touch = false;
    try {
      const t = Date.now();
      const [answer, words] = await Promise.all([fetch(this.api + this.tail, { cache: 'no-store' }), fetch(this.dataset.words ?? '')]);
      if (!answer.ok || !words.ok) throw new Error();
      this.words = await words.json();
      const both = await answer.json();
      this.plan = both.plan; this.people = both.people; this.kit = both.kit;
      // a page kept by the browser's worker is old: its clock is the one this device learnt last
      if (answer.headers.get('x-kept')) { this.offset = Number(this.safe(() => localStorage.getItem(`coulisse.offset.${this.run}`)) ?? 0); this.take(both.frame, Infinity); } else this.take(both.frame, Date.now() - t);
    } catch { this.prepend(el('p', { role: 'alert' }, 'The bench did not answer. Reload this page when the network is back.')); return; }
    this.lay();
    // only where the browser calls the page secure is there a worker; elsewhere the open page keeps itself
    if (isSecureContext) navigator.serviceWorker?.register('/live/worker.js').catch(() => { /* refused: the page works without */ });
    this.listen();
    setInterval(() => this.flush(), 3000);
    addEventListener('online', () => this.flush());
    this.flush();
    this.timer = setInterval(() => this.tick(), 200);
    this.tick();
  }

  /** A phrase in the language of the page. @param {string} key @param {...(string|number)} with_ */
  w(key, ...with_) { return with_.reduce((/** @type {string} */ t, x, i) => t.replace(`{${i}}`, String(x)), this.words[key] ?? key); }

  /** Seconds into the slot by the server's clock. */
  get second() { return (Date.now() + this.offset - this.frame.startMs) / 1000; }

  /** @param {any} frame @param {number} [trip] ms there and back, when known */
  take(frame, trip = 60) {
    // the quickest exchange tells the offset best; a slow line must not shift the clock
    if (trip <= this.best && trip < Infinity) { this.best = trip; this.offset = frame.nowMs + trip / 2 - Date.now(); this.safe(() => localStorage.setItem(`coulisse.offset.${this.run}`, String(this.offset))); }
    if (!this.frame || frame.nowMs >= this.frame.nowMs) this.frame = frame;
    this.said = '';
    if (this.planned && this.frame.planId !== this.planned) this.follow();
    this.planned ??= this.frame.planId;
  }

  /** Another plan was taken up: it is fetched, and the page is laid out again by it. */
  async follow() {
    if (this.following) return;
    this.following = true;
    try {
      const answer = await fetch(this.api + this.tail, { cache: 'no-store' });
      if (!answer.ok) throw new Error();
      const both = await answer.json();
      this.plan = both.plan; this.planned = both.frame.planId;
      this.lay();
      this.said = '';
      this.tick();
    } catch { /* no network: the next frame asks again */ } finally { this.following = false; }
  }

  listen() {
    const source = new EventSource(`${this.api}/stream${this.tail}`);
    source.addEventListener('frame', (e) => { this.heard = Date.now(); this.mark(true); this.take(JSON.parse(e.data)); this.flush(); });
    source.onerror = () => { this.mark(false); if (source.readyState === EventSource.CLOSED) setTimeout(() => { if (!this.again) { this.again = true; this.listen(); this.again = false; } }, 2000); };
  }

  /** @param {boolean} on */
  mark(on) { this.touch = on; this.said = ''; }

  async flush() {
    if (this.sending || !this.queue.all.length) return;
    this.sending = true;
    try {
      const out = this.queue.outgoing();
      const t = Date.now();
      const answer = await fetch(this.api + this.tail, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(out) });
      if (!answer.ok) throw new Error();
      this.queue.answered(out.map((r) => r.id));
      this.mark(true);
      this.take(await answer.json(), Date.now() - t);
    } catch { this.mark(false); } finally { this.sending = false; }
  }

  /** @param {string} kind @param {string} subject @param {string} [text] */
  report(kind, subject, text) { this.queue.add(kind, subject, text); this.said = ''; this.tick(); this.flush(); }

  lay() {
    const p = this.plan;
    this.strip = svg('svg', { class: 'lr-strip', viewBox: `0 0 ${p.slotSeconds} 40`, preserveAspectRatio: 'none', 'aria-hidden': 'true' });
    for (const s of p.segments) this.strip.append(svg('rect', { x: s.startSecond, y: 0, width: s.seconds, height: 40, class: s.gate ? 'gate' : '', 'data-n': s.number }));
    this.hand = svg('line', { x1: 0, x2: 0, y1: 0, y2: 40, class: 'hand' });
    this.strip.append(this.hand);
    const part = (/** @type {string} */ name, /** @type {string} */ word) => { const body = el('div', {}); this[name] = body; return el('section', { class: `lr-${name}` }, el('h2', {}, word), body); };
    this.time = el('p', { class: 'lr-clock' });
    this.drift = el('p', { class: 'lr-drift', role: 'status' });
    this.net = el('p', { class: 'lr-net', role: 'status' });
    this.gate = el('button', { type: 'button', class: 'main lr-tick', onclick: () => { if (this.due) this.report('gate', String(this.due.number)); } });
    this.undo = el('button', { type: 'button', onclick: () => { const last = this.frame.gates.at(-1); if (last) this.report('undo', String(last.number)); } }, this.w('takeBack'));
    this.ways = el('div', { class: 'lr-ways' });
    this.tasks = new TaskList(this);
    this.gates = new GateList(this);
    this.trouble = new Trouble(this, this.people ?? [], this.kit ?? []);
    this.waysOf = this.noted = undefined;
    this.classList.toggle('stage', this.who === 'Stage'); this.classList.toggle('keeper', this.who === 'Time-keeper');
    const note = el('input', { type: 'text', id: 'lr-note', maxlength: '300', autocomplete: 'off' });
    const send = (/** @type {string} */ lead) => { const text = (lead + note.value).trim(); if (text) { this.report('note', 'slot', text); note.value = ''; } };
    this.notes = el('ul', { class: 'plain' });
    this.timers = el('ul', { class: 'plain' });
    const name = el('input', { type: 'text', id: 'lr-name', maxlength: '60', autocomplete: 'off' });
    const minutes = el('input', { type: 'number', id: 'lr-min', min: '0.1', max: '600', step: 'any', inputmode: 'decimal' });
    this.replaceChildren(
      el('header', {}, el('p', { class: 'lr-who' }, this.who || this.w('chef'), this.dataset.rehearsal ? el('b', { class: 'lr-flag' }, ' ' + this.w('rehearsal')) : null, this.who ? null : el('a', { href: `/live/${this.run}/links` }, this.w('links'))), this.net),
      this.strip, el('div', { class: 'lr-head' }, this.time, this.drift), this.trouble.news,
      part('now', this.w('now')), part('next', this.w('next')), part('cue', this.w('cue')),
      el('div', { class: 'lr-do' }, this.gate, this.undo), this.ways, this.gates.root, this.tasks.root, this.trouble.root,
      part('others', this.w('others')),
      el('section', { class: 'lr-timers' }, el('h2', {}, this.w('timers')), el('form', { class: 'row', onsubmit: (/** @type {Event} */ e) => { e.preventDefault(); this.addTimer(name.value, Number(minutes.value)); name.value = ''; minutes.value = ''; } },
        el('div', { class: 'field' }, el('label', { for: 'lr-name' }, this.w('name')), name), el('div', { class: 'field' }, el('label', { for: 'lr-min' }, this.w('minutes')), minutes), el('button', { type: 'submit' }, this.w('start'))), this.timers),
      el('section', { class: 'lr-notes' }, el('h2', {}, this.w('notes')), el('form', { class: 'row', onsubmit: (/** @type {Event} */ e) => { e.preventDefault(); send(''); } },
        el('div', { class: 'field' }, el('label', { for: 'lr-note' }, this.w('note')), note), el('button', { type: 'submit' }, this.w('write')), el('button', { type: 'button', onclick: () => send(this.w('lostNote') + ': ') }, this.w('lostNote'))), this.notes),
      el('p', {}, el('button', { type: 'button', onclick: () => this.light() }, this.w('light')), ' ', el('span', { class: 'soft small' }, this.w('marked'))));
    if (this.safe(() => localStorage.getItem('coulisse.live.light'))) document.documentElement.classList.add('light');
  }

  /** @template T @param {() => T} f @returns {T|null} */
  safe(f) { try { return f(); } catch { return null; } }

  light() { const on = document.documentElement.classList.toggle('light'); this.safe(() => on ? localStorage.setItem('coulisse.live.light', '1') : localStorage.removeItem('coulisse.live.light')); }

  // Timers live on this device: name and the moment they end, so a reload does not touch them.
  get clocks() { return this.safe(() => JSON.parse(localStorage.getItem(`coulisse.timers.${this.run}`) ?? '[]')) ?? []; }

  set clocks(all) { this.safe(() => localStorage.setItem(`coulisse.timers.${this.run}`, JSON.stringify(all))); }

  /** @param {string} name @param {number} minutes */
  addTimer(name, minutes) {
    if (!(minutes > 0)) return;
    this.sound ??= this.safe(() => new AudioContext());
    this.clocks = [...this.clocks, { name: name.trim() || 'Timer', ends: Date.now() + minutes * 60000, rung: false }];
    this.tick();
  }

  ring() {
    const a = this.sound;
    if (!a) return;
    for (let i = 0; i < 3; i++) { const o = a.createOscillator(); o.frequency.value = 880; o.connect(a.destination); o.start(a.currentTime + i * 0.4); o.stop(a.currentTime + i * 0.4 + 0.22); }
  }

  tick() {
    const p = this.plan; const f = this.frame;
    const second = this.second;
    const waiting = this.queue.all;
    const gates = new Map(f.gates.map((/** @type {any} */ g) => [g.number, g.second]));
    for (const r of waiting) if (r.kind === 'gate') { if (!gates.has(Number(r.subject))) gates.set(Number(r.subject), (r.made + this.offset - f.startMs) / 1000); } else if (r.kind === 'undo') gates.delete(Number(r.subject));
    const shown = Math.floor(second);
    const last = [...gates.keys()].reduce((a, b) => Math.max(a, b), 0);
    const key = `${shown}|${this.touch}|${waiting.length}|${f.nowMs}|${this.clocks.length}|${last}`;
    if (key === this.said) return;
    this.said = key;
    this.time.textContent = second < 0 ? this.w('beginsIn', far(second)) : second > p.slotSeconds ? this.w('overBy', clock(second - p.slotSeconds)) : this.w('of', clock(second), clock(p.slotSeconds));
    this.hand.setAttribute('x1', String(Math.min(Math.max(second, 0), p.slotSeconds))); this.hand.setAttribute('x2', this.hand.getAttribute('x1') ?? '0');
    // the last gate that was passed tells how late it is; between gates the plan's lengths count on
    const lastSegment = p.segments.find((/** @type {any} */ s) => s.number === last);
    const late = lastSegment ? Math.round((gates.get(last) ?? 0) - lastSegment.startSecond) : 0;
    const lengths = new Map(f.lengths.map((/** @type {any} */ l) => [l.number, l.seconds]));
    if (waiting.some((r) => ['drop', 'skip', 'early'].includes(r.kind))) for (const [n, long] of this.taken ?? []) lengths.set(n, long); // taken here, not yet heard by the bench
    const parts = laid(p.segments, lengths, gates);
    let i = segmentAt(parts, second);
    if (lastSegment) i = Math.max(i, parts.findIndex((s) => s.number === last));
    // nobody has begun and the time is over: what comes next is still the beginning
    const waits = !gates.size && i >= parts.length;
    const now = parts[i]; const next = waits ? parts[0] : parts[i + 1];
    const drift = waiting.length ? late : f.late;
    this.put(this.drift, !gates.size ? this.w(second < 0 ? 'notBegun' : 'notTicked') : Math.abs(drift) < 5 ? this.w('onTime') : this.w(drift > 0 ? 'behind' : 'ahead', lasting(Math.abs(drift))));
    this.put(this.net, this.touch ? (waiting.length ? this.w('sending', waiting.length) : this.w('inTouch')) : waiting.length === 1 ? this.w('offOne') : this.w('offMany', waiting.length));
    this.net.classList.toggle('off', !this.touch);
    this.say(this.now, now, this.w(i < 0 ? 'notBegunYet' : gates.size ? 'over' : 'timeOver'));
    this.say(this.next, next, i < 0 ? '' : this.w('nothingMore'));
    const mine = parts.slice(waits ? 0 : Math.max(i + 1, 0)).find((s) => s.twins.length);
    const twin = (/** @type {number} */ n) => { const w = p.twins.find((/** @type {any} */ t) => t.number === n); return w ? `${this.w('swap', n)}, ${w.component}, ${w.state}${w.broughtBy ? ', ' + w.broughtBy : ''}` : this.w('swap', n); };
    // a twin that was called early in the segment that runs is brought at once
    const early = f.calls.filter((/** @type {any} */ c) => c.kind === 'early' && now?.twins.includes(Number(c.subject.slice(5)))).map((/** @type {any} */ c) => `${this.w('atOnce')}: ${twin(Number(c.subject.slice(5)))}`);
    this.put(this.cue, [...early, mine ? `${clock(mine.startSecond)}: ${mine.twins.map(twin).join('; ')}` : early.length ? '' : this.w('noSwap')].filter(Boolean).join('\n'));
    this.due = parts.find((s) => s.number > last) ?? null;
    this.put(this.gate, this.due ? this.w('segmentBegins', this.due.number, this.due.show) : this.w('allBegun'));
    this.gate.toggleAttribute('disabled', !this.due);
    this.undo.toggleAttribute('disabled', !f.gates.length);
    const ways = JSON.stringify([f.ways, f.calls]);
    if (this.waysOf !== ways) { this.waysOf = ways; this.ways.replaceChildren(...(f.ways.length ? [el('h2', {}, this.w('waysOut'))] : []), ...f.ways.map((/** @type {any} */ w) => el('button', { type: 'button', onclick: () => { this.taken = w.lengths.map((/** @type {any} */ l) => [l.number, l.seconds]); for (const c of w.calls) this.report(c.kind, c.subject); } }, w.sentence)), ...f.calls.map((/** @type {any} */ c) => el('p', { class: 'lr-called' }, el('span', {}, this.called(c)), el('button', { type: 'button', 'aria-label': `${this.w('notSo')}: ${this.called(c)}`, onclick: () => this.report('undo', c.kind === 'early' ? c.subject : `${c.kind} ${c.subject}`) }, this.w('notSo'))))); }
    this.put(this.others, now ? now.who.filter((/** @type {any} */ w) => w.name !== this.who).map((/** @type {any} */ w) => `${w.name}: ${w.does}`).join('\n') || this.w('nobody') : '');
    const notes = [...waiting.filter((r) => r.kind === 'note').map((r) => `${r.text} (${this.w('waitsHere')})`), ...f.notes.map((/** @type {any} */ n) => `${n.by}: ${n.text}`)];
    if (notes.join('\n') !== this.noted) { this.noted = notes.join('\n'); this.notes.replaceChildren(...notes.map((n) => el('li', { dir: 'auto' }, n))); }
    this.tasks.show(waiting);
    this.gates.show(gates, parts, now);
    this.trouble.show(f, waiting);
    this.countDown();
    for (const r of this.strip.querySelectorAll('rect')) { const n = Number(r.getAttribute('data-n')); r.classList.toggle('on', n === now?.number); r.classList.toggle('out', !parts.some((s) => s.number === n)); }
  }

  /** What was called, in words. @param {{kind:string, subject:string}} c */
  called(c) { return c.kind === 'early' ? `${this.w('swap', c.subject.slice(5))}: ${this.w('early')}` : `${this.w('segment', c.subject)}: ${this.w(c.kind === 'skip' ? 'leftOut' : 'shortened')}`; }

  countDown() {
    const all = this.clocks; let rung = false;
    for (const t of all) if (!t.rung && Date.now() >= t.ends) { t.rung = true; rung = true; this.ring(); }
    if (rung) this.clocks = all;
    this.timers.replaceChildren(...all.map((/** @type {any} */ t, /** @type {number} */ n) => el('li', { class: t.rung ? 'rung' : '' }, el('span', {}, t.name), el('b', { class: 'fig' }, t.rung ? this.w('isUp') : clock(Math.ceil((t.ends - Date.now()) / 1000))), el('button', { type: 'button', onclick: () => { this.clocks = this.clocks.filter((/** @type {any} */ _, /** @type {number} */ i) => i !== n); this.tick(); } }, this.w('doneWith')))));
  }

  /** @param {HTMLElement} where @param {string} text */
  put(where, text) { if (where.textContent !== text) where.textContent = text; }

  /** What a segment asks of this person, and what it shows. @param {HTMLElement} where @param {any} s @param {string} none */
  say(where, s, none) {
    const at = s ? clock(Math.round(s.startSecond)) : '';
    const key = s ? `${s.number} ${at} ${s.seconds}` : none;
    if (where.dataset.key === key) return;
    where.dataset.key = key;
    if (!s) { where.replaceChildren(el('p', {}, none)); return; }
    const mine = s.who.find((/** @type {any} */ w) => w.name === this.who);
    where.replaceChildren(el('p', { class: 'lr-mine', dir: 'auto' }, mine ? mine.does : s.show), mine ? el('p', { class: 'soft' }, s.show) : null ?? '', el('p', { class: 'fig soft' }, `${at}, ${this.w('long', clock(s.seconds))}`, s.silence ? '; ' + this.w('loud') : '', s.droppableSeconds ? '; ' + this.w('mayDrop', clock(s.droppableSeconds)) : ''));
  }
}
/** How far off the slot is: minutes and seconds, hours and days when it is far. @param {number} second */
function far(second) { return second > -3600 ? clock(second).replace('\u2212', '') : lasting(-second); }

customElements.define('live-run', LiveRun);
