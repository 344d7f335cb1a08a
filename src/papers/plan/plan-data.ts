/** The plan in the words and figures that its template sets, in the language it is printed in. */
import { redFlagClasses, redFlagOfCuff } from '#core/decision/facts/facts.ts';
import { isRest } from '#core/decision/left-of-today.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { isWithClinicianAlone } from '#core/prescribing/place-of-dose.ts';
import { addDays, type Day } from '#core/time/day.ts';
import { type DoseSpeech, doseLines, doseTitle, loadText } from '#messages/doses.ts';
import type { planPaper } from '#messages/en/sentences/papers/plan.ts';
import type { selfManagement } from '#messages/en/sentences/self-management.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { dateFormat } from '#messages/formats.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { pageWord } from '#messages/page-words.ts';
import { doseDetails } from '#messages/papers/dose-details.ts';
import { paperSpeech } from '#messages/papers/paper-speech.ts';
import type { Args } from '#messages/sentence.ts';
import { translate } from '#messages/translate.ts';
import type { Look } from '../look.ts';
import { exerciseDrawing } from './exercise-drawing.ts';
import { painAllowed } from './pain-allowed.ts';
import type { PlanPaper, PlanPaperExercise } from './plan-paper.ts';

type PlanWords = typeof planPaper;
type SheetWords = typeof selfManagement;

const wordsIn = (tag: LanguageTag) => {
  const language = everyLanguage[tag];
  return {
    tag,
    speech: paperSpeech(tag),
    say: <Key extends keyof PlanWords>(key: Key, ...[values]: Args<PlanWords[Key]>): string =>
      translate(language.sentences['plan-paper'][key], values ?? {}, language),
    /** Said on the sheet for the time after care in the same words. */
    sheet: <Key extends keyof SheetWords>(key: Key, ...[values]: Args<SheetWords[Key]>): string =>
      translate(language.sentences['self-management'][key], values ?? {}, language),
    date: (day: Day, options: Intl.DateTimeFormatOptions): string =>
      dateFormat(language.locale, { ...options, timeZone: 'UTC' }).format(new Date(day)),
  };
};
type Words = ReturnType<typeof wordsIn>;

const daysOf = (monday: Day): readonly Day[] => Array.from({ length: 7 }, (_, at) => addDays(monday, at));

const weekIn = (monday: Day, { tag, date }: Words) => {
  const days = daysOf(monday);
  const format = dateFormat(everyLanguage[tag].locale, {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  });
  return {
    span: format.formatRange(new Date(days[0]!), new Date(days[6]!)),
    days: days.map((day) => ({
      day,
      weekday: date(day, { weekday: 'short' }),
      date: date(day, { day: 'numeric' }),
    })),
  };
};

const inShort = (dose: Dose, speech: DoseSpeech): string =>
  `${doseTitle(dose, speech)}, ${loadText(dose, speech)}`;

/** What is done, then what goes with it; of an exercise that rests neither. */
const doseIn = ({ dose, easierSession, today }: PlanPaperExercise, { say, speech }: Words) => {
  if (isRest(today)) return { dose: say('resting'), lines: [], notes: [] };
  const isEasier = today === 'bad-day';
  const [now, other] = isEasier ? [easierSession, dose] : [dose, easierSession];
  return {
    dose: doseTitle(now, speech),
    lines: doseLines(now, speech),
    notes: [
      doseDetails(now, speech).join(' '),
      ...(isEasier ? [say('easier-now')] : []),
      say(isEasier ? 'whole' : 'easier', { dose: inShort(other, speech) }),
    ],
  };
};

const whenIn = ({ dose, days, today }: PlanPaperExercise, { say }: Words): readonly string[] => {
  if (isRest(today)) return [];
  if (isWithClinicianAlone(dose)) return [say('supervised')];
  if (days === null) return [say('any-day', { count: dose.sessionsPerWeek })];
  return days.length === 0 ? [say('no-days')] : [];
};

const exerciseIn = (exercise: PlanPaperExercise, words: Words) => {
  const { dose, days, today, title } = exercise;
  return {
    name: title[words.tag],
    drawing: exerciseDrawing(dose, (key, ...values) => pageWord(words.tag, key, ...values)),
    ...doseIn(exercise, words),
    when: whenIn(exercise, words),
    /** Days with a box to tick; "any" where the patient chooses them. */
    days: isWithClinicianAlone(dose) || isRest(today) ? [] : (days ?? 'any'),
  };
};

/** Whether anything may be done now: where all rests, nothing on the paper speaks of doing it. */
const isDoable = ({ exercises, isOff }: PlanPaper): boolean =>
  !isOff && exercises.some(({ today }) => !isRest(today));

const diaryIn = (plan: PlanPaper, { say }: Words): readonly string[] =>
  plan.exercises.length === 0
    ? []
    : plan.joints.flatMap(({ joint }) => [
        ...(isDoable(plan) ? [say('pain-during', { joint })] : []),
        say('pain-morning', { joint }),
        say('stiffness', { joint }),
      ]);

const guidanceIn = (plan: PlanPaper, words: Words) => {
  const { say } = words;
  const { phone } = plan.clinic;
  return [
    { title: say('pain'), lines: painAllowed(plan, words) },
    { title: say('worse'), lines: [say('worse-morning'), say('worse-again', { phone }), say('missed-day')] },
  ];
};

const signsIn = ({ clinic, exercises }: PlanPaper, { sheet, tag }: Words) => {
  const { phone, emergencyNumber, urgentNumber } = clinic;
  const hasCuff = exercises.some(({ dose }) => dose.method === 'occlusion');
  const list = (name: keyof typeof redFlagClasses) =>
    redFlagClasses[name]
      .filter((flag) => hasCuff || flag !== redFlagOfCuff)
      .map((flag) => pageWord(tag, `flag.${flag}`));
  return [
    {
      title: sheet('ring-emergency', { number: emergencyNumber }),
      lines: list('emergency'),
      otherwise: null,
    },
    {
      title: sheet('speak-same-day', { phone }),
      lines: list('same-day'),
      otherwise: sheet('nobody-there', { number: urgentNumber }),
    },
    { title: sheet('ring-clinic', { phone }), lines: list('routine'), otherwise: null },
  ];
};

const keepIn = ({ exercises }: PlanPaper, { tag }: Words): readonly string[] => [
  ...new Set(exercises.flatMap(({ cautions }) => cautions.map((text) => text[tag]))),
];

const signedIn = ({ exercises }: PlanPaper, { say, tag }: Words): readonly string[] =>
  exercises.map(({ title, version, signedName, signedOn, isWithinSigned }) =>
    say(isWithinSigned ? 'signed-within' : 'signed', {
      exercise: title[tag],
      version,
      name: signedName,
      day: signedOn,
    }),
  );

/** What stands over everything: a warning sign or a pause, care that rests, that nothing is signed, or that it changes soon. */
const firstIn = (
  { danger, isOff, exercises, clinic, until }: PlanPaper,
  { say, tag }: Words,
): readonly string[] => [
  ...danger.map((text) => text[tag]),
  ...(isOff ? [say('off', { phone: clinic.phone })] : []),
  ...(exercises.length === 0 ? [say('none', { phone: clinic.phone })] : []),
  ...(until !== null && exercises.length > 0
    ? [say('changes-after', { day: until, phone: clinic.phone })]
    : []),
];

export const planData = (plan: PlanPaper, { language, printedOn }: Look) => {
  const words = wordsIn(language);
  const { say } = words;
  const { clinic, patient } = plan;
  return {
    title: `${say('title')}: ${patient.name}`,
    author: clinic.name,
    sayUnprintable: (names: string) => say('unprintable', { names }),
    heading: say('title'),
    about: say('about', { name: patient.name, day: patient.birthDay }),
    from: say('clinic', { clinic: clinic.name, phone: clinic.phone }),
    first: firstIn(plan, words),
    weeks: plan.weeks.map((monday) => weekIn(monday, words)),
    exercises: plan.exercises.map((exercise) => exerciseIn(exercise, words)),
    diary: diaryIn(plan, words),
    head: say('exercise'),
    notes: [...(isDoable(plan) ? [say('tick')] : []), say('bring-it')],
    guidance: isDoable(plan) ? guidanceIn(plan, words) : [],
    keep: { title: pageWord(language, 'dose.keep'), lines: keepIn(plan, words) },
    stop: { title: pageWord(language, 'handout.stop'), groups: signsIn(plan, words) },
    signed: [...signedIn(plan, words), say('printed', { day: printedOn }), say('holds-until')],
    footer: `${patient.name}. ${say('printed', { day: printedOn })}`,
  };
};
