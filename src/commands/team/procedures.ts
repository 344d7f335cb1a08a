/** Prints every procedure as a JSON line: path, kind, roles, guard. */
import { procedureLines } from '#api/procedures.ts';

export const run = async (): Promise<number> => {
  for (const { path, kind, roles, guard } of procedureLines()) {
    process.stdout.write(`${JSON.stringify({ path, kind, roles, guard })}\n`);
  }
  return 0;
};
