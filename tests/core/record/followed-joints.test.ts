/** Which of the joints that are followed a session asks about. A clinic choice of ours, no source. */
import { expect, it } from 'vitest';
import type { Joint } from '#core/exercises/joints.ts';
import { askedInSession } from '#core/record/followed-joints.ts';

const curl = { joints: ['right-elbow', 'right-wrist'] as const };
const chair = { joints: ['left-knee', 'right-knee'] as const };
const three: readonly Joint[] = ['right-hand', 'right-wrist', 'right-knee'];

it.each<[string, readonly Joint[], readonly { readonly joints: readonly Joint[] }[], readonly Joint[]]>([
  ['one joint, loaded or not', ['right-hand'], [curl], ['right-hand']],
  ['two joints, loaded or not', ['right-hand', 'left-hip'], [curl], ['right-hand', 'left-hip']],
  ['of three those that are loaded', three, [curl], ['right-wrist']],
  ['by any exercise in force', three, [curl, chair], ['right-wrist', 'right-knee']],
  ['of three the first two where none is loaded', three, [], ['right-hand', 'right-wrist']],
])('%s', (_name, followed, exercises, asked) => {
  expect(askedInSession(followed, exercises)).toEqual(asked);
});
