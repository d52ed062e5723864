// @ts-check
// What is written and not yet kept stays in the browser: short texts where they are at hand at once, long ones where there is room for five megabytes.

const KEY = 'coulisse.draft';
const LONG = 'coulisse.draft.long';
const AT_HAND = 1_000_000; // characters; browsers give a site about five million here in all

/** @template T @param {(store: IDBObjectStore) => IDBRequest<T>} does @returns {Promise<T>} */
function room(does) {
  return new Promise((done, fail) => {
    const open = indexedDB.open('coulisse', 1);
    open.onupgradeneeded = () => open.result.createObjectStore('drafts');
    open.onerror = () => fail(open.error);
    open.onsuccess = () => {
      const act = open.result.transaction('drafts', 'readwrite');
      const asked = does(act.objectStore('drafts'));
      act.oncomplete = () => { open.result.close(); done(asked.result); };
      act.onabort = act.onerror = () => { open.result.close(); fail(act.error); };
    };
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
    await room((s) => s.put(text, KEY));
    localStorage.setItem(LONG, '1');
    localStorage.removeItem(KEY);
    return true;
  } catch { return false; }
}

/** The text that was kept; empty for none. @returns {string | Promise<string>} */
export function draft() {
  try {
    return localStorage.getItem(LONG) ? room((s) => s.get(KEY)).then((t) => String(t ?? ''), () => '') : localStorage.getItem(KEY) ?? '';
  } catch { return ''; }
}
