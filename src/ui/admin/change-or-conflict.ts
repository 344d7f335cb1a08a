/** A change against what stood on the page: where a colleague came first, the page is read again and nothing typed is lost. */
import { type Answer, change } from '../account/call.ts';

export const changeOrConflict = async (
  path: string,
  input: unknown,
  onConflict: () => void,
): Promise<Answer<unknown>> => {
  const answer = await change(path, input);
  if (!answer.ok && answer.problem === 'conflict') onConflict();
  return answer;
};
