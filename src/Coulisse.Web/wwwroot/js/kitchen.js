// @ts-check
// The kitchen's book on a narrow screen: a row is one line until it is touched. Which groups stand open is remembered while the window is.

const KEY = 'coulisse.kitchen.open';
const book = document.querySelector('form[data-book]');

book?.addEventListener('click', (e) => {
  const b = /** @type {Element} */ (e.target).closest?.('.item-open, .item-all');
  const row = b?.closest('tr');
  if (!b || !row) return;
  if (b.matches('.item-all')) { row.classList.add('every'); b.remove(); row.querySelector('input')?.focus(); return; }
  const open = row.classList.toggle('open');
  b.setAttribute('aria-expanded', String(open));
  if (open && row.matches('.blank')) row.querySelector('input')?.focus();
});

const parts = /** @type {NodeListOf<HTMLDetailsElement>} */ (document.querySelectorAll('details.part[id]'));
if (parts.length) {
  try { for (const id of JSON.parse(sessionStorage.getItem(KEY) ?? '[]')) { const p = document.getElementById(id); if (p instanceof HTMLDetailsElement) p.open = true; } } catch { /* no storage: they begin folded */ }
  const meant = document.getElementById(location.hash.slice(1));
  if (meant instanceof HTMLDetailsElement) { meant.open = true; meant.scrollIntoView(); }
  for (const p of parts) p.addEventListener('toggle', () => { try { sessionStorage.setItem(KEY, JSON.stringify(Array.from(parts).filter((x) => x.open).map((x) => x.id))); } catch { /* no storage: they begin folded next time */ } });
}
