/** Sets, band, effort, rest and tempo of a low-load dose: the clinician's word, else the clinic's choice. */
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { WorkingLine } from '../working-line.ts';
import type { LowLoadWork } from './bad-day-dose.ts';
import type { LowLoadInput } from './low-load-input.ts';

type WorkField =
  | 'sets'
  | 'repetitionsLow'
  | 'repetitionsHigh'
  | 'reserve'
  | 'restSeconds'
  | 'secondsPerRepetition'
  | 'sessionsPerWeek';

const fields: Readonly<Record<WorkField, { setting: string; label: string; unit: string }>> = {
  sets: { setting: 'low-load-sets', label: 'Sets', unit: '1' },
  repetitionsLow: { setting: 'low-load-repetitions-low', label: 'Fewest repetitions', unit: '1' },
  repetitionsHigh: { setting: 'low-load-repetitions-high', label: 'Most repetitions', unit: '1' },
  reserve: { setting: 'low-load-reserve', label: 'Repetitions in reserve', unit: '1' },
  restSeconds: { setting: 'low-load-rest-seconds', label: 'Rest between sets', unit: 's' },
  secondsPerRepetition: {
    setting: 'low-load-seconds-per-repetition',
    label: 'Time of one repetition',
    unit: 's',
  },
  sessionsPerWeek: { setting: 'low-load-sessions-per-week', label: 'Sessions a week', unit: '1' },
};

export const workOf = (
  input: LowLoadInput,
  oneRepMaxKg: number | null,
  loadKg: number,
  settings: SettingValues,
): LowLoadWork => {
  const chosen = (field: WorkField): number => input[field] ?? settings[fields[field].setting] ?? Number.NaN;
  return {
    method: 'low-load',
    sets: chosen('sets'),
    repetitions: { low: chosen('repetitionsLow'), high: chosen('repetitionsHigh') },
    reserve: chosen('reserve'),
    restSeconds: chosen('restSeconds'),
    secondsPerRepetition: chosen('secondsPerRepetition'),
    sessionsPerWeek: chosen('sessionsPerWeek'),
    loadKg,
    oneRepMaxKg,
  };
};

export const workLines = (input: LowLoadInput, dose: LowLoadWork): readonly WorkingLine[] => {
  const values: Readonly<Record<WorkField, number>> = {
    ...dose,
    repetitionsLow: dose.repetitions.low,
    repetitionsHigh: dose.repetitions.high,
  };
  return (Object.keys(fields) as WorkField[]).map((field) => {
    const isGiven = input[field] !== undefined;
    return {
      label: fields[field].label,
      how: isGiven ? 'Set for this patient.' : 'The clinic’s own choice; no source fixes it.',
      value: values[field],
      unit: fields[field].unit,
      source: isGiven ? 'clinician' : 'clinic-choice',
    };
  });
};
