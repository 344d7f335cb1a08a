/** Side to side and the cuff pressures as they are read. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import type { CuffDue } from '#core/prescribing/occlusion/pressure/remeasure-plan.ts';
import { CuffPressures } from '#ui/clinician/outcomes/cuff-pressures.tsx';
import { SideToSide } from '#ui/clinician/outcomes/side-to-side.tsx';

const day = '2026-03-02';
const grip = (side: 'left' | 'right', forceKg: number) => ({
  kind: 'grip' as const,
  day,
  side,
  forceKg,
  id: side,
  recordedAt: 0,
  recordedBy: 'a',
  confirmed: false,
  answeredAtHome: false,
  visitId: null,
  atDistance: null,
});

it('both sides stand in one line with what may be said of their difference', () => {
  const html = renderToStaticMarkup(
    <SideToSide measurements={[grip('left', 20), grip('right', 15)]} operations={[]} day={day} />,
  );
  expect(html).toContain('Not judged.');
  expect(html).toContain('Right is 75 % of left. The error of measuring is not known');
});

it('one side alone has no line', () => {
  expect(
    renderToStaticMarkup(<SideToSide measurements={[grip('left', 20)]} operations={[]} day={day} />),
  ).toBe('');
});

it('a cuff pressure names its last day, or why it is measured again now', () => {
  const cuff: CuffDue = {
    limb: 'leg',
    side: 'left',
    cuffWidthCm: 11,
    position: 'seated',
    lastOn: '2026-02-20',
    usableTo: '2026-03-20',
    why: null,
  };
  const shown = (over: Partial<CuffDue> = {}) =>
    renderToStaticMarkup(<CuffPressures patientId="p" cuffs={[{ ...cuff, ...over }]} day={day} />);
  expect(shown()).toMatch(/Left leg, cuff 11 cm, seated.*may be used to 20 Mar/);
  const again = shown({ why: 'Measured 29 days ago; it may be used for 28. Measure again.' });
  expect(again).toMatch(/measure again before it is used.*Measured 29 days ago/);
  expect(again).not.toContain('may be used to');
});
