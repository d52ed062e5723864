// @ts-check
// Prep tasks of a run, for one person: the next ones with done, skip and lost; what was closed can be opened again.
import { el } from './dom.js';

const SHOWN = 6;

export class TaskList {
  /** @param {any} run the live page */
  constructor(run) {
    this.run = run;
    this.list = el('ol', { class: 'plain lr-list' });
    this.closed = el('ul', { class: 'plain' });
    this.says = el('summary', {});
    this.more = el('details', {}, this.says, this.closed);
    this.root = el('section', { class: 'lr-tasks' }, el('h2', {}, run.w('today')), this.list, this.more);
    const p = run.plan;
    this.all = run.dataset.rehearsal ? [] : p.bars.filter((/** @type {any} */ b) => !['meal', 'heat', 'alone'].includes(b.kind) && (!run.who || b.rows.includes('p:' + run.who)));
    this.root.hidden = this.all.length === 0;
    /** @type {Map<string, any>} */ this.made = new Map();
  }

  /** Moment a second of the plan falls on, by the server's clock. @param {number} second */
  at(second) { return this.run.frame.startMs + (second - this.run.plan.slotStart) * 1000; }

  /** @param {number} ms */
  clock(ms) { return new Intl.DateTimeFormat(document.documentElement.lang || 'en', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(ms); }

  /** State of each task: what the server folded, then what waits here. @param {any[]} waiting */
  states(waiting) {
    const of = new Map(this.run.frame.tasks.map((/** @type {any} */ t) => [t.id, t.state]));
    for (const r of waiting) {
      if (r.kind === 'undo') of.delete(r.subject);
      else if (r.kind === 'done') of.set(r.subject, 'done');
      else if (r.kind === 'skip') of.set(r.subject, 'skipped');
      else if (r.kind === 'lost') of.set(r.subject, 'lost');
    }
    return of;
  }

  /** @param {any[]} waiting */
  show(waiting) {
    if (!this.all.length) return;
    const now = Date.now() + this.run.offset;
    const of = this.states(waiting);
    const open = this.all.filter((/** @type {any} */ b) => !['done', 'skipped', 'lost'].includes(of.get(b.id)));
    const closed = this.all.filter((/** @type {any} */ b) => !open.includes(b)).reverse();
    const minute = Math.floor(now / 60000);
    const key = `${open.map((/** @type {any} */ b) => b.id)}|${closed.map((/** @type {any} */ b) => b.id + of.get(b.id))}|${minute}`;
    if (key === this.said) return;
    this.said = key;
    const held = /** @type {HTMLElement|null} */ (document.activeElement)?.dataset?.task;
    const w = (/** @type {string} */ k, /** @type {any[]} */ ...x) => this.run.w(k, ...x);
    const day = (/** @type {number} */ ms) => new Date(ms).toDateString() === new Date(now).toDateString() ? '' : new Intl.DateTimeFormat(document.documentElement.lang || 'en', { weekday: 'short' }).format(ms) + ' ';
    this.list.replaceChildren(...open.slice(0, SHOWN).map((/** @type {any} */ b) => {
      const from = this.at(b.start); const until = this.at(b.end);
      const act = (/** @type {string} */ kind, /** @type {string} */ word, /** @type {string} */ css) => el('button', { type: 'button', class: css, 'data-task': `${kind}.${b.id}`, 'aria-label': `${word}: ${b.text}`, onclick: () => this.run.report(kind, b.id) }, word);
      return el('li', { class: now > until ? 'late' : now >= from ? 'on' : '' },
        el('div', { class: 'lr-task' }, el('p', { class: 'fig' }, el('b', {}, day(from) + this.clock(from)), ' ', w('until', this.clock(until)), b.slack > 0 ? `; ${w('canWait', this.clock(from + b.slack * 1000))}` : ''), el('p', { class: 'lr-what', dir: 'auto' }, b.text), el('p', { class: 'soft fig', dir: 'auto' }, [this.run.who ? '' : b.people, b.kit, b.celsius, b.facts].filter(Boolean).join('; '))),
        el('div', { class: 'lr-acts' }, act('done', w('done'), 'main'), act('skip', w('skip'), ''), act('lost', w('lost'), '')));
    }));
    if (!open.length) this.list.append(el('li', {}, w('allDone')));
    this.says.textContent = `${w('done')}: ${closed.length} / ${this.all.length}`;
    this.closed.replaceChildren(...closed.slice(0, 40).map((/** @type {any} */ b) => el('li', {}, el('span', { dir: 'auto' }, b.text), ' ', el('i', {}, { done: w('done'), skipped: w('skipped'), lost: w('wasLost') }[/** @type {string} */ (of.get(b.id))]), el('button', { type: 'button', 'data-task': `undo.${b.id}`, 'aria-label': `${w('undone')}: ${b.text}`, onclick: () => this.run.report('undo', b.id) }, w('undone')))));
    this.more.hidden = !closed.length;
    if (held) /** @type {HTMLElement|null} */ (this.root.querySelector(`[data-task="${CSS.escape(held)}"]`) ?? this.list.querySelector('button'))?.focus({ preventScroll: true });
  }
}
