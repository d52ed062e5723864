// @ts-check
// What is written and not yet kept stays in the browser: short texts where they are at hand at once, long ones where there is room for five megabytes.

const KEY = 'coulisse.draft';
const LONG = 'coulisse.draft.long';
const AT_HAND = 1_000_000; // characters; browsers give a site about five million here in all

/** @type {IDBDatabase | null} */
let held = null;

/** Opens the room ahead: a text is then put there within the task that took it, before the page is drawn or left. @returns {Promise<IDBDatabase>} */
export function openRoom() {
  return new Promise((done, fail) => {
    if (held) { done(held); return; }
    const open = indexedDB.open('coulisse', 1);
    open.onupgradeneeded = () => open.result.createObjectStore('drafts');
    open.onerror = () => fail(open.error);
    open.onsuccess = () => { held = open.result; held.onclose = held.onversionchange = () => { held?.close(); held = null; }; done(held); };
  });
}

/** @template T @param {(store: IDBObjectStore) => IDBRequest<T>} does @returns {Promise<T>} */
function room(does) { return held ? act(held, does) : openRoom().then((db) => act(db, does)); }

/** @template T @param {IDBDatabase} db @param {(store: IDBObjectStore) => IDBRequest<T>} does @returns {Promise<T>} */
function act(db, does) {
  return new Promise((done, fail) => {
    const turn = db.transaction('drafts', 'readwrite');
    const asked = does(turn.objectStore('drafts'));
    turn.oncomplete = () => done(asked.result);
    turn.onabort = turn.onerror = () => fail(turn.error);
    turn.commit(); // not left to the end of the task: drawing five megabytes takes seconds, and a page left before then would take the text with it
  });
}

/** Keeps a text; an empty one is forgotten. @param {string} text @returns {Promise<boolean>} false when the browser has no room for it */
export async function keepDraft(text) {
  try {
    if (text.length <= AT_HAND) {
      // both are done before anything is waited for: the page may be left at any wait
      if (text.trim()) localStorage.setItem(KEY, text); else localStorage.removeItem(KEY);
      if (localStorage.getItem(LONG)) { localStorage.removeItem(LONG); await room((s) => s.delete(KEY)); }
      return true;
    }
    const put = room((s) => s.put(text, KEY));
    localStorage.setItem(LONG, '1'); // said before it is waited for: the page may be left meanwhile
    await put;
    localStorage.removeItem(KEY);
    return true;
  } catch { return false; }
}

const atHand = () => localStorage.getItem(KEY) ?? '';

/** The text that was kept; empty for none. @returns {string | Promise<string>} */
export function draft() {
  try {
    return localStorage.getItem(LONG) ? room((s) => s.get(KEY)).then((t) => String(t ?? atHand()), atHand) : atHand();
  } catch { return ''; }
}
