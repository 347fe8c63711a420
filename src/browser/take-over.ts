/** A worker that was asked to take over and does not say so within this has done so before, or never will. */
const TAKES_OVER_WITHIN_MS = 3000;

/**
 * Reloads the page into the newest version. A worker that waits is asked to take over, and the reload comes when it has;
 * where none waits any more, another tab has asked already, and the reload comes at once. It always comes, and once.
 */
export function reloadIntoNewest(
  registration: Pick<ServiceWorkerRegistration, 'waiting'>,
  workers: Pick<ServiceWorkerContainer, 'addEventListener'>,
  reload: () => void,
): void {
  const { waiting } = registration;
  if (!waiting) {
    reload();
    return;
  }
  let isDue = true;
  const once = () => {
    if (isDue) reload();
    isDue = false;
  };
  workers.addEventListener('controllerchange', once, { once: true });
  setTimeout(once, TAKES_OVER_WITHIN_MS);
  waiting.postMessage('take-over');
}
