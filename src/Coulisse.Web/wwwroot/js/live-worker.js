// @ts-check
// Keeps a live page for a reload without network: the newest answer of the bench wins, the kept one is marked as kept.
const KEPT = 'coulisse-live';

self.addEventListener('install', () => /** @type {any} */ (self).skipWaiting());
self.addEventListener('activate', (e) => /** @type {any} */ (e).waitUntil(/** @type {any} */ (self).clients.claim()));

self.addEventListener('fetch', (event) => {
  const e = /** @type {any} */ (event);
  const at = new URL(e.request.url);
  if (e.request.method !== 'GET' || at.origin !== location.origin || at.pathname.endsWith('/stream') || at.pathname.endsWith('/links')) return;
  if (at.pathname.startsWith('/a/')) e.respondWith(asset(e.request));
  else if (at.pathname.startsWith('/live/') || at.pathname.startsWith('/api/live/')) e.respondWith(newest(e.request));
});

/** Files carry a fingerprint in their address: what is kept is right for ever. @param {Request} request */
async function asset(request) {
  const kept = await caches.open(KEPT);
  const held = await kept.match(request);
  if (held) return held;
  const answer = await fetch(request);
  if (answer.ok) await kept.put(request, answer.clone());
  return answer;
}

/** @param {Request} request */
async function newest(request) {
  const kept = await caches.open(KEPT);
  try {
    const answer = await fetch(request);
    if (answer.ok) await kept.put(request, answer.clone());
    return answer;
  } catch (gone) {
    const held = await kept.match(request);
    if (!held) throw gone;
    const headers = new Headers(held.headers);
    headers.set('x-kept', '1');
    return new Response(held.body, { status: held.status, headers });
  }
}
