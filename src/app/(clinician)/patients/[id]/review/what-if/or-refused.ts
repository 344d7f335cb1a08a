/** What was found, or the words in which it was refused: what is typed into an address may be anything. */
const isRefused = (error: unknown): error is Error & { readonly problem: string } =>
  error instanceof Error && 'problem' in error && error.problem === 'refused';

export const orRefused = async <T>(
  ask: (() => Promise<T>) | null,
): Promise<{ readonly found: T | null; readonly refused: string | null }> => {
  if (!ask) return { found: null, refused: null };
  try {
    return { found: await ask(), refused: null };
  } catch (error) {
    if (isRefused(error)) return { found: null, refused: error.message };
    throw error;
  }
};
