/** Start of the server. A file that cannot be used ends the process with the reason. */
import { clinicIds } from '#data/people.ts';
import { runtime } from './runtime.ts';

export const start = async (): Promise<void> => {
  const at = runtime();
  if (!at.settings.DEMO || (await clinicIds(at.store)).length > 0) return;
  const { loadDemoClinic } = await import('#demo/load.ts');
  await loadDemoClinic(at);
};
