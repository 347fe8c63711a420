/**
 * Reloads the page into the newest version. A worker that waits is asked to take over, and the reload comes when it has;
 * where none waits any more, another tab has asked already, and the reload comes at once.
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
  workers.addEventListener('controllerchange', reload, { once: true });
  waiting.postMessage('take-over');
}
