/** A row of the worklist: what it says, the one action it offers, and its four weeks as a picture. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { dangers, worklistItemKinds } from '#core/worklist/item.ts';
import { stripOf } from '#core/worklist/strip.ts';
import { workOf } from '#core/worklist/work.ts';
import { withRouter } from '#tests/support/with-router.tsx';
import type { WorklistItem, WorklistLine } from '#ui/clinician/answers.ts';
import { asText } from '#ui/clinician/as-text.ts';
import { largeStepInWords, shortDose, stepInWords } from '#ui/clinician/worklist/dose-step.ts';
import { primaryOf } from '#ui/clinician/worklist/item-place.ts';
import { benchRow } from '#ui/clinician/worklist/row-props.ts';
import { stripDrawing } from '#ui/clinician/worklist/strip-drawing.ts';
import { StripPicture } from '#ui/clinician/worklist/strip-picture.tsx';
import { Workbench } from '#ui/clinician/worklist/workbench.tsx';

const today = '2026-04-20';
const clock = { zone: 'Europe/Dublin', now: Date.parse('2026-04-20T08:45:00+01:00') };
const knee = 'right-knee';

const itemOf = (kind: WorklistItem['kind'], over: Partial<WorklistItem> = {}): WorklistItem => ({
  key: kind,
  kind,
  work: workOf({ kind, facts: over.facts ?? {} }),
  facts: {},
  sentence: `The sentence of ${kind}.`,
  since: clock.now - 3_600_000,
  joint: null,
  decisionId: null,
  acknowledgedBy: null,
  assignedTo: null,
  assignedName: null,
  ...over,
});

const strip = stripOf({
  today,
  about: knee,
  versions: [],
  mornings: [
    { day: '2026-04-19', joint: knee, pain: 0 },
    { day: today, joint: knee, pain: 6 },
  ],
  usuals: [{ joint: knee, usual: 2, usualTop: 2 }],
});

const lineOf = (item: WorklistItem, over: Partial<WorklistLine> = {}): WorklistLine => ({
  patientId: 'p',
  givenName: 'Maeve',
  familyName: 'Tarrowby',
  age: 67,
  phone: '020 913 0151',
  joint: knee,
  figures: '6/10 this morning, usual 2',
  strip,
  doses: [],
  message: null,
  item,
  others: [],
  ...over,
});

const sign = itemOf('red-flag', {
  facts: {
    signId: 's1',
    urgency: 'same-day',
    contactDueAt: clock.now,
    failedAttempts: 0,
    source: 'patient',
  },
});

const dose = (over: object = {}): Dose =>
  ({
    method: 'low-load',
    exerciseId: 'knee-extension-seated',
    side: 'right',
    sets: 3,
    repetitions: { low: 23, high: 25 },
    loadKg: 3.5,
    reserve: 2,
    restSeconds: 60,
    secondsPerRepetition: 4,
    sessionsPerWeek: 3,
    ...over,
  }) as Dose;

describe('what else a row says', () => {
  const review = (joint: string, over: Partial<WorklistItem> = {}) =>
    itemOf('routine-contact', {
      key: `review ${joint}`,
      joint,
      sentence: `A review is due for the ${joint.replaceAll('-', ' ')} (W1: easing).`,
      ...over,
    });
  const said = (...others: readonly WorklistItem[]) =>
    benchRow(lineOf(sign, { others: [...others] }), clock, today).others.map(({ sentence }) => sentence);

  it('is said once of several joints, and apart where anything but the joint differs', () => {
    expect(said(review('left-wrist'), review('right-knee'), review('left-knee'))).toEqual([
      'A review is due for the left wrist, right knee and left knee (W1: easing).',
    ]);
    const older = review('right-knee', { since: clock.now - 86_400_000 });
    const taken = review('left-hip', { acknowledgedBy: 'Nuala Derravane' });
    expect(said(review('left-wrist'), older, taken)).toHaveLength(3);
    expect(said(itemOf('message'), itemOf('message'))).toHaveLength(2);
  });

  it('does not say the word it stands behind twice', () => {
    const eased = itemOf('ease-back', { joint: 'left-wrist', sentence: 'Eased back for the left wrist.' });
    expect(said(eased)).toEqual(['for the left wrist.']);
  });
});

describe('the one action of a row', () => {
  it('is for danger a contact about every open sign and call of the patient, or a place, and nothing else', () => {
    const call = itemOf('same-day-contact', { decisionId: 'd1' });
    expect(primaryOf(lineOf(sign, { others: [call] }))).toEqual({
      act: 'contact',
      about: { signIds: ['s1'], decisionIds: ['d1'], urgencies: ['same-day', 'same-day'] },
    });
    for (const kind of dangers) expect(['contact', 'go']).toContain(primaryOf(lineOf(itemOf(kind))).act);
    expect(primaryOf(lineOf(itemOf('pause', { decisionId: 'd1' }), { others: [] }))).toMatchObject({
      act: 'go',
    });
  });

  it('is signing where a dose waits and only a link where it cannot be shown', () => {
    expect(primaryOf(lineOf(itemOf('awaiting-signature'))).act).toBe('go');
  });

  it('is offered by every kind of item', () => {
    for (const kind of worklistItemKinds) expect(primaryOf(lineOf(itemOf(kind)))).toBeTruthy();
  });
});

describe('a waiting dose', () => {
  it('is said old → new with only what changes, and a new one as new', () => {
    expect(stepInWords(dose(), dose({ repetitions: { low: 25, high: 25 } }))).toMatch(
      /: 23–25 → 25 repetitions$/,
    );
    expect(stepInWords(dose(), dose({ loadKg: 4 }))).toMatch(/: 3\.5 → 4 kg$/);
    expect(stepInWords(dose(), dose())).toMatch(/: written anew$/);
    expect(stepInWords(null, dose())).toMatch(/: new$/);
    expect(shortDose(dose({ repetitions: { low: 25, high: 25 } }))).toBe('3 × 25');
  });

  it.each([
    ['under 10 %', 10, 10.9, null],
    ['at 10 %', 10, 11, null],
    ['over 10 %', 10, 11.1, 'This step is 11 %: over 10 %.'],
    ['less than before', 10, 5, null],
    ['of unknown size', 0, 2, 'The size of this step is not known.'],
  ] as const)(
    'is opened before it is signed where its load is over 10 % more: %s',
    (_what, from, to, said) => {
      expect(largeStepInWords(dose({ loadKg: from }), dose({ loadKg: to }))).toBe(said);
    },
  );

  it('of an exercise that is new is opened before it is signed', () => {
    expect(largeStepInWords(null, dose())).toBe('This exercise is new in the plan.');
  });
});

const shown = (...lines: readonly WorklistLine[]): string =>
  renderToStaticMarkup(
    withRouter(
      <Workbench
        rows={asText(lines.map((line) => benchRow(line, clock, today)))}
        colleagues={[]}
        signer="Nuala Derravane"
        againHours={2}
        mostAgainHours={{ emergency: 1, 'same-day': 4, routine: 24 }}
        readAt={clock.now}
      />,
    ),
  );

const waiting = (over: Partial<WorklistLine['doses'][number]> = {}): WorklistLine['doses'][number] => ({
  prescriptionId: 'v2',
  dose: dose({ repetitions: { low: 25, high: 25 } }),
  badDay: dose({ sets: 1 }),
  plannedDays: null,
  before: dose(),
  beside: [],
  newCautions: [],
  ...over,
});

describe('a row', () => {
  it('says who, how old, which joint, the figures, the sentence, and the telephone as a link', () => {
    const markup = shown(lineOf(itemOf('ease-back', { decisionId: 'd1' })));
    expect(markup).toContain('67 · right knee');
    expect(markup).toContain('6/10 this morning, usual 2');
    expect(markup).toContain('The sentence of ease-back.');
    expect(markup).toContain('href="tel:0209130151"');
  });

  it('signs in one press only a dose said in full whose cautions are those in force', () => {
    const one = lineOf(itemOf('awaiting-signature'), { doses: [waiting()] });
    expect(shown(one)).toMatch(/Sign 3 × 25/);
    const caution = { id: 'c', text: 'Stop if dizzy.', toPatient: 'Stop.' } as never;
    const careful = lineOf(itemOf('awaiting-signature'), { doses: [waiting({ newCautions: [caution] })] });
    expect(shown(careful)).not.toMatch(/Sign 3 × 25/);
    expect(shown(careful)).toContain('Open the dose');
    const besides = lineOf(itemOf('awaiting-signature'), { doses: [waiting({ beside: [dose()] })] });
    expect(shown(besides)).toContain('Open the dose');
    const more = lineOf(itemOf('awaiting-signature'), {
      doses: [waiting({ dose: dose({ restSeconds: dose().restSeconds - 5 }) })],
    });
    expect(shown(more)).toContain('Open the dose');
    const two = lineOf(itemOf('awaiting-signature'), {
      doses: [waiting(), waiting({ prescriptionId: 'v3' })],
    });
    expect(shown(two)).not.toMatch(/Sign 3 × 25/);
    expect(shown(two)).toContain('Open 2 doses');
  });

  it('tells of a warning sign how far it has come, and offers neither to accept nor to snooze it', () => {
    const markup = shown(lineOf(sign), lineOf(itemOf('message'), { patientId: 'q', message: 'May I?' }));
    expect(markup.indexOf('Warning signs')).toBeLessThan(markup.indexOf('Reply'));
    expect(markup).toMatch(
      /Reported 20 Apr, 07:45, sent by the patient.*Not acknowledged.*Contact not recorded.*Resumed or ended/,
    );
    expect(markup).not.toMatch(/Accept|Snooze/);
    expect(benchRow(lineOf(sign), clock, today).canSnooze).toBe(false);
  });

  it('says of a warning sign nobody could be reached about when it is tried again', () => {
    const hour = 3_600_000;
    const tried = (contactDueAt: number) =>
      shown(lineOf({ ...sign, facts: { ...sign.facts, failedAttempts: 1, contactDueAt } }));
    expect(tried(clock.now + hour)).toMatch(/Tried once, nobody reached.*Try again /);
    expect(tried(clock.now - hour)).toMatch(/To be tried again since /);
  });

  it('of a record kept to another team shows the name and the danger alone', () => {
    const hidden = { age: null, phone: null, joint: null, figures: null, strip: null } as const;
    const markup = shown(lineOf(sign, hidden));
    expect(markup).not.toMatch(/tel:|<svg class="strip"|67/);
  });
});

describe('the picture of four weeks', () => {
  const picture = (over: Partial<Parameters<typeof stripOf>[0]> = {}) =>
    renderToStaticMarkup(
      <StripPicture
        drawing={stripDrawing(
          stripOf({
            today,
            about: knee,
            versions: [],
            mornings: [],
            usuals: [{ joint: knee, usual: 2, usualTop: 2 }],
            ...over,
          }),
          today,
        )}
      />,
    );
  const path = (markup: string, name: string) =>
    new RegExp(`class="strip-${name}" d="([^"]*)"`).exec(markup)?.[1];
  const mornings = (pains: readonly (number | null)[]) =>
    pains.map((pain, place) => ({
      day: `2026-04-${String(place + 1).padStart(2, '0')}`,
      joint: knee as 'right-knee',
      pain,
    }));

  it('hangs what is over the usual from its edge, marks a 0, and crosses what did not come', () => {
    const markup = picture({ mornings: mornings([0, 2, 6, null]) });
    expect(path(markup, 'over')).toMatch(/^M[\d.]+ 23v8$/);
    expect(path(markup, 'within')?.match(/v/g)).toHaveLength(3);
    // The fourth, and each day from the fifth to the nineteenth.
    expect(path(markup, 'missing')?.match(/M/g)).toHaveLength(16);
  });

  it('draws neither bars nor crosses where nothing was due', () => {
    const markup = picture();
    expect([
      path(markup, 'within'),
      path(markup, 'over'),
      path(markup, 'missing'),
      path(markup, 'dose'),
    ]).toEqual(['', '', '', '']);
  });

  it('is under 1 kB with an answer every morning, whatever they were', () => {
    const pains = Array.from({ length: 20 }, (_, place) => place % 11);
    const drawn = picture({ mornings: mornings(pains) }).replace(/aria-label="[^"]*"/, '');
    expect(drawn.length).toBeLessThan(1024);
  });
});
