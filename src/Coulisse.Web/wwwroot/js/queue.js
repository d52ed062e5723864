// @ts-check
// Reports wait in the browser's storage until the bench has them. Nothing is taken off before it was answered for.

/** @typedef {{id:string, kind:string, subject:string, text:string, made:number}} Report */

/** A random id, also where there is no secure context. */
export function newId() {
  const b = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(b, (x) => x.toString(16).padStart(2, '0')).join('');
}

/** @param {string} name key in the storage @param {Pick<Storage,'getItem'|'setItem'>} store @param {() => number} now */
export function makeQueue(name, store, now) {
  /** @type {Report[]} */ let held = [];
  try { held = JSON.parse(store.getItem(name) ?? '[]'); } catch { held = []; }
  const keep = () => { try { store.setItem(name, JSON.stringify(held)); } catch { /* a full or closed storage: it still waits in the page */ } };
  return {
    get all() { return held; },
    /** @param {string} kind @param {string} subject @param {string} [text] */
    add(kind, subject, text = '') { const r = { id: newId(), kind, subject, text, made: now() }; held = [...held, r]; keep(); return r; },
    /** What is sent: how long ago, not when, so that a device whose clock is wrong reports the right moment. */
    outgoing() { return held.slice(0, 400).map((r) => ({ id: r.id, kind: r.kind, subject: r.subject, text: r.text, agoMs: Math.max(0, Math.round(now() - r.made)) })); },
    /** @param {string[]} ids */
    answered(ids) { held = held.filter((r) => !ids.includes(r.id)); keep(); },
  };
}

/** Where the slot stands. @param {{number:number,startSecond:number,seconds:number}[]} segments @param {number} second @returns {number} index, -1 before, length after */
export function segmentAt(segments, second) {
  if (!segments.length || second < segments[0].startSecond) return -1;
  for (let i = 0; i < segments.length; i++) if (second < segments[i].startSecond + segments[i].seconds) return i;
  return segments.length;
}

/**
 * The segments that are still played, each from the second it begins: what has begun at its gate, the others one after the other by their lengths now.
 * @template {{number:number,startSecond:number,seconds:number}} S
 * @param {S[]} segments @param {Map<number, number>} lengths where they are not as planned; 0 is left out @param {Map<number, number>} gates second each began @returns {S[]}
 */
export function laid(segments, lengths, gates) {
  /** @type {S[]} */ const all = [];
  let at = segments.length ? segments[0].startSecond : 0;
  for (const s of segments) {
    const begun = gates.get(s.number); const seconds = lengths.get(s.number) ?? s.seconds;
    if (begun === undefined && seconds <= 0) continue;
    all.push({ ...s, startSecond: begun ?? at, seconds });
    at = (begun ?? at) + seconds;
  }
  return all;
}

/** Minutes and seconds. @param {number} s */
export function clock(s) {
  const a = Math.floor(Math.abs(s));
  return `${s < 0 ? '\u2212' : ''}${Math.floor(a / 60)}:${String(a % 60).padStart(2, '0')}`;
}

/** A length of time in the largest sensible units. @param {number} seconds */
export function lasting(seconds) {
  const s = Math.round(Math.abs(seconds));
  if (s < 90 && s % 60) return `${s}\u202fs`;
  if (s < 3600) return s % 60 ? `${Math.floor(s / 60)}\u202fmin ${s % 60}\u202fs` : `${s / 60}\u202fmin`;
  if (s < 172800) return `${Math.floor(s / 3600)}\u202fh${s % 3600 >= 60 ? ` ${Math.floor((s % 3600) / 60)}\u202fmin` : ''}`;
  return `${Math.floor(s / 86400)}\u202fd`;
}
