/** Runs once when the server starts: opens the store, brings it up to date, fills an empty demo. */
export const register = async () => {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return;
  const { start } = await import('#server/start.ts');
  await start();
  const { runtime } = await import('#server/runtime.ts');
  const { keepWhileRunning, keepWordsOut } = await import('#server/jobs/audit-anchoring.ts');
  keepWhileRunning(runtime());
  if (process.env.NODE_ENV === 'production') keepWordsOut();
};
