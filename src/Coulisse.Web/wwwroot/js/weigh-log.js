// @ts-check
// What was done at the scale, in order, and what follows from it: one log, one fold.

/** @typedef {{key?:string, grams?:number, off?:boolean, tare?:boolean}} Act */

/** @param {string} name @param {Pick<Storage,'getItem'|'setItem'>} store */
export function makeLog(name, store) {
  /** @type {Act[]} */ let held = [];
  try { const kept = JSON.parse(store.getItem(name) ?? '[]'); if (Array.isArray(kept)) held = kept; } catch { held = []; }
  const keep = () => { try { store.setItem(name, JSON.stringify(held)); } catch { /* a full or closed storage: the page still holds it */ } };
  return {
    get all() { return held; },
    /** @param {Act} act */
    add(act) { held = [...held, act]; keep(); },
    undo() { const last = held.at(-1); held = held.slice(0, -1); keep(); return last; },
    clear() { held = []; keep(); },
  };
}

/** What is weighed and what the scale shows. @param {Act[]} log @param {{key:string}[]} lines */
export function fold(log, lines) {
  const known = new Set(lines.map((l) => l.key));
  /** @type {Map<string, number>} */ const done = new Map();
  /** @type {Map<string, number>} */ let pan = new Map(); // what lies on the scale since the last tare
  for (const a of log) {
    if (a.tare) { pan = new Map(); continue; }
    if (!a.key || !known.has(a.key)) continue;
    if (a.off) { done.delete(a.key); pan.delete(a.key); } else { done.set(a.key, a.grams ?? 0); pan.set(a.key, a.grams ?? 0); }
  }
  let total = 0;
  for (const g of pan.values()) total += g;
  return { done, total };
}

/** Grams with the digits a scale would show. @param {number} g */
export function grams(g) {
  const size = Math.abs(g);
  return new Intl.NumberFormat('en-GB', { maximumFractionDigits: size >= 10 ? 1 : size >= 1 ? 2 : 3 }).format(g);
}
