/** What stands for each exercise today: said once of those of which nothing else is to be said. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { PlanItem } from '#core/plan/plan.ts';
import { PlanView } from '#ui/clinician/danger/plan-view.tsx';

const noon = Date.parse('2026-03-09T12:00:00Z');
const item = (exerciseId: string, over: Partial<PlanItem> = {}): PlanItem =>
  ({ itemId: exerciseId, exerciseId, today: 'as-planned', reasons: [], testFrom: null, ...over }) as PlanItem;
const lines = (...items: readonly PlanItem[]): readonly string[] =>
  renderToStaticMarkup(
    <PlanView plan={{ items, joints: new Map() }} clock={{ now: noon, zone: 'UTC' } as never} />,
  )
    .split('<li>')
    .slice(1)
    .map((line) => line.replace(/<[^>]*>/g, ''));

describe('what the patient may do today', () => {
  it('is one line for exercises as planned, and a line each where a reason or a day is to be said', () => {
    const [first, second, third, ...more] = lines(
      item('chair-rise'),
      item('wall-push-up', { today: 'rest-this-joint', reasons: [{ code: 'warning-sign' }] as never }),
      item('knee-extension-sitting'),
      item('heel-raise-two-legs', { testFrom: noon + 1 }),
      item('bridge', { testFrom: noon }),
    );
    expect(first).toMatch(/^session as planned today .+; .+; .+$/);
    expect(second).toContain('warning sign');
    expect(third).toContain('No test to failure before');
    expect(more).toEqual([]);
  });

  it.each([
    ['machine-gone', 'Press by the window is no longer in use for it at the clinic'],
    ['machine-load-gone', 'its load can no longer be set on Press by the window'],
  ])('names the machine of an exercise that rests: %s', (code, said) => {
    const reasons = [{ code, machine: 'Press by the window', today: 'rest-this-joint' }] as never;
    const [line] = lines(item('leg-press-machine', { today: 'rest-this-joint', reasons }));
    expect(line).toContain(said);
  });
});
