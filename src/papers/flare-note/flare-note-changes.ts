/** What changed before a flare, by day: what happened, warning signs, doses signed. */
import { sentence } from '#core/episode/documents/document-words.ts';
import type { FlareNoteSpeech } from '#messages/papers/colleague-words.ts';
import { doseText } from '#messages/papers/paper-speech.ts';
import type { FlareNotePaper } from './flare-note-paper.ts';

type Told = FlareNotePaper['events'][number];

/** A course with its last day and how it is taken; a medicine with what became of it; else what happened. */
const happened = ({ kind, medicine, lastDay, courseForm }: Told, speech: FlareNoteSpeech): string => {
  const { say } = speech;
  if (kind === 'steroid-course' && lastDay)
    return [
      say('event-course', { end: speech.day(lastDay) }),
      ...(courseForm ? [say(`course-${courseForm}`)] : []),
    ].join(', ');
  if (!medicine) return say(`event-${kind}`);
  const { act, medicineClass } = medicine;
  return `${speech.medicine(medicineClass)}: ${say(act ? `medicine-${act}` : 'medicine-missed')}`;
};

const eventLine = (told: Told, speech: FlareNoteSpeech): string => {
  const { say } = speech;
  const { day: of, joint, remark } = told;
  const what = [happened(told, speech), ...(remark ? [speech.quoted(remark.replace(/\.$/, ''))] : [])].join(
    ': ',
  );
  const on = speech.day(of);
  return joint ? say('event-where', { on, what, where: speech.joint(joint) }) : say('event', { on, what });
};

export const changeLines = (
  { events, signs, signed }: FlareNotePaper,
  speech: FlareNoteSpeech,
): readonly string[] => {
  const { say, day, quoted, flag: inWords } = speech;
  const all = [
    ...events.map((one) => ({ day: one.day, text: eventLine(one, speech) })),
    ...signs.map(({ on, flags }) => ({
      day: on,
      text: say('sign', {
        on: day(on),
        what: sentence(flags.map((flag) => quoted(inWords(flag))).join('; ') || say('sign-unnamed')),
      }),
    })),
    ...signed.map(({ on, dose }) => ({
      day: on,
      text: say('signed', {
        on: day(on),
        exercise: speech.exercise(dose.exerciseId),
        dose: doseText(dose, speech.dose),
      }),
    })),
  ];
  const lines = all.toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0)).map(({ text }) => text);
  return [...(lines.length > 0 ? lines : [say('no-changes')]), say('not-other')];
};
