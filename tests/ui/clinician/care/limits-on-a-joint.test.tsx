/** The days of a limit: until it is lifted only where nobody has lifted it. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { Limits } from '#ui/clinician/care/limits-on-a-joint.tsx';

const told = (over: object) =>
  renderToStaticMarkup(
    <Limits
      day="2026-04-20"
      care={
        {
          limits: [
            {
              id: '1',
              joint: 'right-knee',
              kind: 'load-limit',
              limitKg: 2,
              from: '2026-03-09',
              to: null,
              author: 'A surgeon',
              ...over,
            },
          ],
        } as never
      }
    />,
  );

it('a limit that nobody lifted holds until it is lifted', () => {
  expect(told({})).toContain('9 Mar until lifted');
  expect(told({ to: '2026-04-30' })).toContain('9 Mar to 30 Apr');
});

it('a limit that was lifted, or that a later phase followed, says since when it holds no longer', () => {
  const text = told({ liftedOn: '2026-04-06' });
  expect(text).toContain('9 Mar until 6 Apr; holds no longer');
  expect(text).not.toContain('until lifted');
});
