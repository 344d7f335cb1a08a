/**
 * Time under restriction of a whole session of one limb, against the caps of makers' guides.
 *
 * Under 20 min for a leg and under 15 min for an arm, the cap itself excluded. Another guide says
 * under 15 min for any continuous cuff. A person new to it is advised to one exercise, 7-10 min.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note } from '#core/outcome.ts';
import { exerciseCapSeconds, reperfusionSeconds, sessionCapSeconds } from './limits.ts';

const newPatientSeconds = { low: 420, high: 600 } as const;

const stricterGuide: Note = {
  code: 'stricter-guide',
  text: 'Another guide states under 15 min for a continuous cuff on any limb; this session is longer.',
};
const between: Note = {
  code: 'reperfusion',
  text: `Release at least ${reperfusionSeconds.value.betweenExercises} s between exercises and ${reperfusionSeconds.value.afterBlock} s after a block.`,
};
const newPatient: Note = {
  code: 'new-patient',
  text: `At the start one exercise with the cuff on, about ${newPatientSeconds.low / 60}-${newPatientSeconds.high / 60} min.`,
};

export const occlusionSessionTime = calculation({
  id: 'occlusion-session-time',
  title: 'Time under restriction of a whole session',
  area: 'occlusion',
  input: [
    {
      name: 'restrictedSeconds',
      kind: 'list',
      minItems: 1,
      maxItems: 20,
      of: { name: 'exercise', kind: 'number', unit: 's', min: 0, max: 3600 },
      about: 'Time under restriction of each exercise of this limb.',
    },
    { name: 'limb', kind: 'enum', values: ['arm', 'leg'] },
  ],
  result: [
    { name: 'totalSeconds', unit: 's' },
    { name: 'sessionCapSeconds', unit: 's', about: 'the total must stay under it' },
    { name: 'withinSessionCap', unit: '' },
    { name: 'withinExerciseCaps', unit: '', about: 'every exercise within its own cap' },
  ],
  citations: [
    sessionCapSeconds.leg.citation,
    sessionCapSeconds.arm.citation,
    { source: 'occlusion-interview', locator: 'summary: first sessions', mark: 'second-hand' },
  ],
  calculate: ({ restrictedSeconds, limb }) => {
    const totalSeconds = restrictedSeconds.reduce((sum, seconds) => sum + seconds, 0);
    const cap = sessionCapSeconds[limb].value;
    const notes =
      totalSeconds >= sessionCapSeconds.arm.value
        ? [between, newPatient, stricterGuide]
        : [between, newPatient];
    return answer(
      {
        totalSeconds,
        sessionCapSeconds: cap,
        withinSessionCap: totalSeconds < cap,
        withinExerciseCaps: restrictedSeconds.every((seconds) => seconds <= exerciseCapSeconds.value),
      },
      notes,
    );
  },
  example: { restrictedSeconds: [390, 390], limb: 'leg' },
});
