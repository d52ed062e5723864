// @ts-check
// Groups of a page that are one line until they are opened. Which stand open is remembered while the window is; an address that names one opens it.

const KEY = `coulisse.open.${location.pathname}`;
const parts = /** @type {HTMLDetailsElement[]} */ ([...document.querySelectorAll('details.part[id]')]);
const keep = () => { try { sessionStorage.setItem(KEY, JSON.stringify(parts.filter((p) => p.open).map((p) => p.id))); } catch { /* no storage: they begin folded next time */ } };
const meant = () => {
  const part = location.hash ? document.getElementById(decodeURIComponent(location.hash.slice(1)))?.closest('details.part') : null;
  if (part instanceof HTMLDetailsElement && !part.open) { part.open = true; part.scrollIntoView(); }
};

if (parts.length) {
  try { for (const id of JSON.parse(sessionStorage.getItem(KEY) ?? '[]')) { const p = parts.find((x) => x.id === id); if (p) p.open = true; } } catch { /* no storage: they begin folded */ }
  for (const p of parts) p.addEventListener('toggle', keep);
  meant();
  addEventListener('hashchange', meant);
}
