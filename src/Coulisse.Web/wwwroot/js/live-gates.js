// @ts-check
// The time-keeper's list: every segment with the moment it was to begin, the moment it begins now, and when it did.
import { el } from './dom.js';
import { clock } from './queue.js';

export class GateList {
  /** @param {any} run the live page */
  constructor(run) {
    this.run = run;
    this.list = el('ol', { class: 'plain' });
    this.root = el(run.who === 'Time-keeper' ? 'section' : 'details', { class: 'lr-gates' }, el(run.who === 'Time-keeper' ? 'h2' : 'summary', {}, run.w('gates')), this.list);
  }

  /** @param {Map<number, number>} gates second each segment began @param {any[]} parts segments still played, from when they begin now @param {any} now segment */
  show(gates, parts, now) {
    const due = new Map(parts.map((p) => [p.number, p.startSecond]));
    const key = JSON.stringify([[...gates], [...due], now?.number]);
    if (key === this.said) return;
    this.said = key;
    const w = (/** @type {string} */ k, /** @type {any[]} */ ...x) => this.run.w(k, ...x);
    this.list.replaceChildren(...this.run.plan.segments.map((/** @type {any} */ s) => {
      const at = gates.get(s.number);
      const off = at === undefined ? 0 : Math.round(at - s.startSecond);
      const said = at !== undefined ? `${w('begun', clock(at))}${Math.abs(off) < 5 ? '' : `, ${w(off > 0 ? 'behind' : 'ahead', clock(Math.abs(off)))}`}` : !due.has(s.number) ? w('leftOut') : Math.abs(due.get(s.number) - s.startSecond) < 5 ? '' : w('nowAt', clock(due.get(s.number)));
      return el('li', { class: s.number === now?.number ? 'on' : at !== undefined || !due.has(s.number) ? 'past' : '' }, el('b', { class: 'fig' }, clock(s.startSecond)), el('span', { dir: 'auto' }, `${s.number}. ${s.show}`), s.gate ? el('b', {}, w('gate')) : null, said ? el('span', { class: 'fig' }, said) : null, s.droppableSeconds && at === undefined ? el('span', { class: 'fig soft' }, w('mayDrop', clock(s.droppableSeconds))) : null);
    }));
  }
}
