// @ts-check
// Saves a drawing as a picture: the same SVG, painted on a canvas of the page's own. Nothing leaves the browser.
import { el } from './dom.js';

const FINE = 2; // pixels of the picture for one of the page
const WIDEST = 16000; // beyond this a browser gives an empty canvas

const KEPT = ['fill', 'stroke', 'stroke-width', 'stroke-dasharray', 'font-size', 'font-weight', 'font-family', 'text-anchor', 'opacity', 'color'];

/** A drawing that stands alone: the page's own look is written into it. @param {SVGSVGElement} drawing @returns {SVGSVGElement} */
export function standalone(drawing) {
  const copy = /** @type {SVGSVGElement} */ (drawing.cloneNode(true));
  const from = [drawing, ...drawing.querySelectorAll('*')]; const to = [copy, ...copy.querySelectorAll('*')];
  from.forEach((e, i) => {
    if (e.closest('title')) return;
    const seen = getComputedStyle(e);
    for (const k of KEPT) { const v = seen.getPropertyValue(k); if (v) to[i].setAttribute(k, v); }
    for (const k of ['class', 'tabindex', 'role', 'aria-label', 'style']) to[i].removeAttribute(k);
  });
  const box = drawing.viewBox.baseVal; const size = drawing.getBoundingClientRect();
  const width = box?.width || size.width; const height = box?.height || size.height;
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(Math.ceil(width))); copy.setAttribute('height', String(Math.ceil(height)));
  return copy;
}

/** @param {Blob} blob @param {string} name */
function save(blob, name) {
  const url = URL.createObjectURL(blob);
  const a = el('a', { href: url, download: name });
  document.body.append(a); a.click(); a.remove();
  setTimeout(() => URL.revokeObjectURL(url), 10000);
}

/** @param {SVGSVGElement} alone */
const words = (alone) => new Blob([new XMLSerializer().serializeToString(alone)], { type: 'image/svg+xml' });

/** @param {SVGSVGElement} alone @param {string} name without its ending */
export function saveSvg(alone, name) { save(words(alone), name + '.svg'); }

/** @param {SVGSVGElement} alone @param {string} name without its ending @param {string} ground colour under it */
export async function savePng(alone, name, ground) {
  const width = Number(alone.getAttribute('width')); const height = Number(alone.getAttribute('height'));
  const by = Math.min(FINE, WIDEST / width, WIDEST / height);
  const url = URL.createObjectURL(words(alone));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = /** @type {HTMLCanvasElement} */ (el('canvas', { width: Math.round(width * by), height: Math.round(height * by) }));
    const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
    pen.fillStyle = ground;
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise((r) => canvas.toBlob(r, 'image/png'));
    if (!blob) throw new Error('no picture');
    save(/** @type {Blob} */ (blob), name + '.png');
  } finally { URL.revokeObjectURL(url); }
}

/** The colour a drawing stands on. @param {Element} e */
export function groundOf(e) {
  for (let at = /** @type {Element|null} */ (e); at; at = at.parentElement) { const c = getComputedStyle(at).backgroundColor; if (c && c !== 'rgba(0, 0, 0, 0)' && c !== 'transparent') return c; }
  return '#fff';
}

// Every chart has its SVG as a link that works without script; the picture needs one.
for (const box of document.querySelectorAll('.chart-box')) {
  const drawing = /** @type {SVGSVGElement|null} */ (box.querySelector('.chart-draw svg'));
  if (!drawing) continue;
  const b = el('button', { type: 'button', class: 'word', onclick: () => savePng(standalone(drawing), box.id || 'drawing', groundOf(drawing)).catch(() => { b.textContent = 'The picture could not be made; the SVG holds the same.'; }) }, 'Save the drawing (PNG)');
  box.querySelector('.row')?.append(b);
}
