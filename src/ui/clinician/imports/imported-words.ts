/** An imported entry in one line. What the file did not say is left out. */
import type {
  ImportedMeasurement,
  ImportedMorning,
  ImportedSession,
  ImportedValue,
} from '#core/record/imported.ts';
import { say } from '#messages/en/staff/exchange/imports.ts';

const said = (...parts: readonly (string | null)[]): string => parts.filter((one) => one !== null).join(', ');

type Figure = 'sets' | 'repetitions' | 'load' | 'pain' | 'before' | 'during' | 'after' | 'stiff' | 'tired';

const figure = (name: Figure, n: number | null): string | null =>
  n === null ? null : say(`said.${name}`, { n });

const spaced = (word: string | null): string | null => word?.replaceAll('-', ' ') ?? null;

const sessionInWords = (row: ImportedSession): string =>
  said(
    ...[row.exercise, spaced(row.joint), figure('sets', row.sets), figure('repetitions', row.repetitions)],
    ...[figure('load', row.loadKg), figure('before', row.painBefore)],
    ...[figure('during', row.painDuring), figure('after', row.painAfter)],
  );

const morningInWords = (row: ImportedMorning): string =>
  said(
    ...[spaced(row.joint), figure('pain', row.pain)],
    ...[figure('stiff', row.stiffnessMinutes), figure('tired', row.fatigue)],
  );

const measurementInWords = (row: ImportedMeasurement): string => {
  if (row.what === 'body-mass') return say('said.weight', { n: row.massKg });
  if (row.what === 'stature') return say('said.height', { n: row.statureCm });
  if (row.what === 'blood-pressure')
    return say('said.pressure', { high: row.systolicMmhg, low: row.diastolicMmhg });
  if (row.what === 'grip') return say(`said.grip-${row.side}`, { n: row.forceKg });
  return said(figure('pain', row.pain), row.place);
};

export const importedInWords = (value: ImportedValue): string => {
  if ('text' in value) return value.text;
  if ('what' in value) return measurementInWords(value);
  return 'exercise' in value ? sessionInWords(value) : morningInWords(value);
};
