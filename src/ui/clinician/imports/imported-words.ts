/** An imported entry in one line. What the file did not say is left out. */
import type {
  ImportedMeasurement,
  ImportedMorning,
  ImportedSession,
  ImportedValue,
} from '#core/record/imported.ts';

const said = (...parts: readonly (string | null)[]): string => parts.filter((one) => one !== null).join(', ');

const figure = (value: number | null, words: (value: number) => string): string | null =>
  value === null ? null : words(value);

const spaced = (word: string | null): string | null => word?.replaceAll('-', ' ') ?? null;

const sessionInWords = (row: ImportedSession): string =>
  said(
    row.exercise,
    spaced(row.joint),
    figure(row.sets, (sets) => `${sets} sets`),
    figure(row.repetitions, (repetitions) => `${repetitions} repetitions`),
    figure(row.loadKg, (loadKg) => `${loadKg} kg`),
    figure(row.painBefore, (pain) => `pain before ${pain}`),
    figure(row.painDuring, (pain) => `during ${pain}`),
    figure(row.painAfter, (pain) => `after ${pain}`),
  );

const morningInWords = (row: ImportedMorning): string =>
  said(
    spaced(row.joint),
    figure(row.pain, (pain) => `pain ${pain}`),
    figure(row.stiffnessMinutes, (minutes) => `stiff for ${minutes} min`),
    figure(row.fatigue, (fatigue) => `tiredness ${fatigue}`),
  );

const measurementInWords = (row: ImportedMeasurement): string => {
  if (row.what === 'body-mass') return `weight ${row.massKg} kg`;
  if (row.what === 'stature') return `height ${row.statureCm} cm`;
  if (row.what === 'blood-pressure') return `blood pressure ${row.systolicMmhg}/${row.diastolicMmhg} mmHg`;
  return row.what === 'grip' ? `grip, ${row.side}: ${row.forceKg} kg` : said(`pain ${row.pain}`, row.place);
};

export const importedInWords = (value: ImportedValue): string => {
  if ('text' in value) return value.text;
  if ('what' in value) return measurementInWords(value);
  return 'exercise' in value ? sessionInWords(value) : morningInWords(value);
};
