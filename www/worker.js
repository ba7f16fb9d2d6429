// Keeps the site for where there is no network: the pocket edition at once, every page as it is visited. What is kept
// is of one edition; the next waits until somebody presses Update. The build fills in the constants.
const EDITION = "boughline EDITION_HASH";
// Each file with the hash of its bytes, so that no two editions mix.
const AT_ONCE = FILE_HASHES;
const PAGES = PAGE_HASHES;

/** An address without its fragment, so that a plan is never kept; the folder is its first page. */
const bare = (address) => { const { origin, pathname } = new URL(address); return (origin + pathname).replace(/\/$/u, "/index.html"); };
const kept = () => caches.open(EDITION);

async function keepAtOnce() {
  const cache = await kept();
  await Promise.all(Object.entries(AT_ONCE).map(([file, integrity]) => fetched(cache, file, { integrity })));
  // Pages that are open now were visited before this worker was there.
  const open = await clients.matchAll({ type: "window", includeUncontrolled: true });
  await Promise.allSettled(open.map(({ url }) => bare(url)).filter(isOurs).map(async (page) => {
    const response = await fetch(page, { cache: "reload" });
    await keepPage(cache, page, response);
  }));
}

const nameOf = (address) => address.slice(registration.scope.length);
const isOurs = (address) => address.startsWith(registration.scope) && nameOf(address) in PAGES;

/** Keeps a page if it is of this edition: the network may have a newer one already. */
async function keepPage(cache, page, response) {
  if (!response.ok || !isOurs(page)) return;
  const bytes = await response.arrayBuffer();
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  if (`sha256-${btoa(String.fromCharCode(...hash))}` !== PAGES[nameOf(page)]) return;
  await cache.put(page, new Response(bytes, { headers: response.headers }));
}

/** Fetches and keeps. A host may have led elsewhere, and a browser takes no page from a worker that says so. */
async function fetched(cache, name, options) {
  const response = await fetch(name, { cache: "reload", ...options });
  if (!response.ok) throw new Error(`${name}: ${response.status}`);
  const { body, headers } = response;
  await cache.put(name, response.redirected ? new Response(body, { headers }) : response);
}

async function forgetOthers() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith("boughline ") && name !== EDITION).map((name) => caches.delete(name)));
}

/** What is kept, else what the network has, which is kept if it is a page; without either the pocket edition. */
async function answer(event, address) {
  const { request } = event;
  const cache = await kept().catch(() => null); // storage may be blocked or full
  const found = (name) => cache?.match(name, { ignoreVary: true });
  const page = request.mode === "navigate";
  const before = await found(address);
  if (before) return before;
  try {
    const response = await fetch(request);
    if (page && cache) event.waitUntil(keepPage(cache, address, response.clone()).catch(() => {}));
    return response;
  } catch (fault) {
    const pocket = page && await found("pocket.html");
    if (pocket) return pocket;
    throw fault;
  }
}

addEventListener("install", (event) => event.waitUntil(keepAtOnce()));
addEventListener("activate", (event) => event.waitUntil(forgetOthers()));
addEventListener("message", ({ data }) => data === "update" && skipWaiting());
addEventListener("fetch", (event) => {
  const address = bare(event.request.url);
  if (event.request.method !== "GET" || !address.startsWith(registration.scope)) return;
  if (event.request.mode === "navigate" || nameOf(address) in AT_ONCE) event.respondWith(answer(event, address));
});
