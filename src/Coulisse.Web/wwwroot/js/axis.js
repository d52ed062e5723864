// @ts-check
// Time to place and back. Nights without work are cut out: an axis of stretches with a break between them.

const BREAK = 34; // px for a stretch of time that is left out

/**
 * An axis over stretches of time.
 * @param {{from:number,to:number}[]} stretches seconds @param {number} scale px a second
 */
export function makeAxis(stretches, scale) {
  let x = 0;
  const parts = stretches.map((s, i) => {
    const part = { from: s.from, to: s.to, x, width: (s.to - s.from) * scale };
    x += part.width + (i < stretches.length - 1 ? BREAK : 0);
    return part;
  });
  const width = x;
  return {
    parts, width, scale,
    /** Place of a second; a second in a break lies in the break. @param {number} t */
    at(t) {
      for (let i = 0; i < parts.length; i++) {
        const p = parts[i];
        if (t < p.from) return i === 0 ? p.x : p.x - BREAK * (1 - (t - parts[i - 1].to) / (p.from - parts[i - 1].to));
        if (t <= p.to) return p.x + (t - p.from) * scale;
      }
      return width;
    },
    /** Second at a place. @param {number} px */
    second(px) {
      for (const p of parts) if (px <= p.x + p.width) return p.from + Math.max(0, px - p.x) / scale;
      return parts.length ? parts[parts.length - 1].to : 0;
    },
  };
}

/** Seconds between ticks, so that labels have at least `room` px. @param {number} scale @param {number} room */
export function tickStep(scale, room) {
  for (const s of [5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10800, 21600]) if (s * scale >= room) return s;
  return 43200;
}

/**
 * Puts bars that overlap on lanes of their own. Bars come in order of start.
 * @template {{start:number,end:number}} T @param {T[]} bars @returns {{lane:Map<T,number>,lanes:number}}
 */
export function lanes(bars) {
  /** @type {number[]} */ const free = [];
  const lane = new Map();
  for (const b of bars) {
    let n = free.findIndex((end) => end <= b.start);
    if (n < 0) { n = free.length; free.push(0); }
    free[n] = b.end;
    lane.set(b, n);
  }
  return { lane, lanes: Math.max(1, free.length) };
}
