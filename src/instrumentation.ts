/** Runs once when the server starts: opens the store, brings it up to date, fills an empty demo. */
export const register = async () => {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return;
  const { startOrEnd } = await import('#server/start.ts');
  await startOrEnd();
};
