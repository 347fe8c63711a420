import { reloadIntoNewest } from './take-over.ts';

/** Keeps the site on the device, and offers a new version once all of it has arrived. */

const notice = document.querySelector<HTMLElement>('#new-version');

function offer(registration: ServiceWorkerRegistration): void {
  if (!notice || notice.hasChildNodes()) return;
  const reload = document.createElement('button');
  reload.type = 'button';
  reload.textContent = 'Reload';
  reload.addEventListener('click', () =>
    reloadIntoNewest(registration, navigator.serviceWorker, () => location.reload()),
  );
  notice.append('A new version is ready. ', reload);
}

function watch(worker: ServiceWorker, registration: ServiceWorkerRegistration): void {
  worker.addEventListener('statechange', () => {
    // Without a controller this is the first visit, and there is no older version to replace.
    if (worker.state === 'installed' && navigator.serviceWorker.controller) offer(registration);
  });
}

/** The page itself goes first on a slow line: fetching all the others waits until it is there. */
const pageIsThere = () =>
  new Promise<void>((there) => {
    if (document.readyState === 'complete') there();
    else window.addEventListener('load', () => there(), { once: true });
  });

async function register(address: string): Promise<void> {
  await pageIsThere();
  const registration = await navigator.serviceWorker.register(address, { updateViaCache: 'none' });
  if (registration.waiting && navigator.serviceWorker.controller) offer(registration);
  registration.addEventListener(
    'updatefound',
    () => registration.installing && watch(registration.installing, registration),
  );
  const { active } = await navigator.serviceWorker.ready;
  active?.postMessage('fetch-tones');
}

const address = notice?.dataset['worker'];
if (import.meta.env.PROD && address && 'serviceWorker' in navigator) {
  // Private windows and old browsers may refuse. The site then works as long as there is a signal.
  register(address).catch(() => undefined);
}
