/** Asks the service worker to hold the page that opens the sealed hour; false where it could not. */
const patienceMs = 20_000;

export const hourAddress = '/group-hour';

export const holdHourPage = async (): Promise<boolean> => {
  if (!('serviceWorker' in navigator)) return false;
  await navigator.serviceWorker.register('/sw.js');
  const { active } = await navigator.serviceWorker.ready;
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = ({ data }) => resolve(data === true);
    setTimeout(() => resolve(false), patienceMs);
    active?.postMessage('keep-hour', [port2]);
  });
};
