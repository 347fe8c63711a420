/*
 * Keeps the whole site on the device. Addresses are relative to the scope, so the site may live below any path.
 * The build fills in the two lists: address to hash of the content.
 */
const FIRST = /*FIRST*/ {};
const LATER = /*LATER*/ {};

const scope = new URL(self.registration.scope).pathname;
const CACHE = `sidestand ${scope}`;
const hashOf = (path) => FIRST[path] ?? LATER[path];
const keyOf = (path) => `${scope}${path}?h=${hashOf(path)}`;

/** An address as it is written in the lists. A malformed % stands in none of them, and is left as it is. */
function decoded(path) {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

/** What stands in the lists for an address: itself, with its slash, or without index.html. */
const listed = (path) => [path, `${path}/`, path.replace(/(^|\/)index\.html$/, '$1')].find((p) => hashOf(p));

/** Fetches what is listed and not there yet. What did not change since the last version is there already. */
async function fetchMissing(list) {
  const cache = await caches.open(CACHE);
  const fetchOne = async (path) => {
    if (await cache.match(keyOf(path))) return;
    const response = await fetch(scope + path, { cache: 'no-cache', credentials: 'same-origin' });
    if (!response.ok || response.redirected) throw new Error(`${response.status} ${path}`);
    await cache.put(keyOf(path), response);
  };
  await Promise.all(Object.keys(list).map(fetchOne));
}

async function dropOld() {
  const cache = await caches.open(CACHE);
  const kept = new Set(Object.keys({ ...FIRST, ...LATER }).map((path) => new URL(keyOf(path), self.location).href));
  for (const request of await cache.keys()) if (!kept.has(request.url)) await cache.delete(request);
}

/** A player asks for a stretch of a sound, and some play nothing when they get the whole. */
async function stretchOf(response, range) {
  const [, from, to] = /^bytes=(\d*)-(\d*)$/.exec(range) ?? [];
  const whole = await response.blob();
  if (!from) return new Response(whole, { headers: response.headers });
  const end = Math.min(to ? Number(to) + 1 : whole.size, whole.size);
  if (Number(from) >= end)
    return new Response(null, { status: 416, headers: { 'Content-Range': `bytes */${whole.size}` } });
  const headers = {
    'Content-Type': response.headers.get('Content-Type') ?? '',
    'Content-Range': `bytes ${from}-${end - 1}/${whole.size}`,
  };
  return new Response(whole.slice(Number(from), end), { status: 206, headers });
}

async function answer(request, path) {
  const hit = await caches.match(keyOf(path), { cacheName: CACHE });
  if (!hit) return fetch(request);
  const range = request.headers.get('Range');
  return range ? stretchOf(hit, range) : hit;
}

const offline = async () => (await caches.match(keyOf('offline/'), { cacheName: CACHE })) ?? Response.error();

self.addEventListener('install', (event) => event.waitUntil(fetchMissing(FIRST)));
self.addEventListener('activate', (event) => event.waitUntil(dropOld().then(() => self.clients.claim())));
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') self.skipWaiting();
  if (event.data !== 'fetch-tones') return;
  const tell = () => event.source?.postMessage('tones-kept');
  // No harm when it fails: the next page asks again.
  event.waitUntil(fetchMissing(LATER).then(tell, () => undefined));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname, search } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin || !pathname.startsWith(scope)) return;
  const asked = decoded(pathname.slice(scope.length));
  const path = listed(asked);
  if (path === undefined) {
    if (request.mode === 'navigate') event.respondWith(fetch(request).catch(offline));
  } else if (request.mode === 'navigate' && path !== asked) {
    event.respondWith(Response.redirect(scope + path + search, 302));
  } else event.respondWith(answer(request, path));
});
