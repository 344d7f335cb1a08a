/** A dose of a template in words. What is left out is worked out, or typed, for each patient. */
import { type TemplateDose, templateDoseTitle } from '#core/prescribing/clinic-template.ts';
import { figure } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing/templates.ts';
import { say as sayDose } from '#messages/en/staff/prescribing/workbench.ts';
import { methodInWords } from '../../words.ts';
import { schemeChoices } from '../request-fields.ts';

const numberAt = ({ values }: TemplateDose, name: string): number | null => {
  const value = values[name];
  return typeof value === 'number' ? value : null;
};

const sets = (dose: TemplateDose): string | null => {
  const scheme = schemeChoices.find(({ value }) => value === dose.values.schemeId);
  if (scheme) return scheme.label;
  const [count, low, high] = ['sets', 'repetitionsLow', 'repetitionsHigh'].map((name) =>
    numberAt(dose, name),
  );
  if (count === null || low === null || high === null) return null;
  const band = low === high ? `${low}` : `${low}–${high}`;
  const holdSeconds = numberAt(dose, 'holdSeconds');
  const repetitions = holdSeconds === null ? band : `${band} × ${holdSeconds} s`;
  return say('dose.sets', { sets: String(count), repetitions });
};

const said = (value: number | null, text: (value: number) => string): readonly string[] =>
  value === null ? [] : [text(value)];

const sideWords = { left: say('pick.left'), right: say('pick.right'), both: sayDose('side.both') } as const;

export const templateDoseInWords = (dose: TemplateDose): string => {
  const work = sets(dose);
  return [
    `${templateDoseTitle(dose)}, ${sideWords[dose.side]} (${methodInWords[dose.method]})`,
    ...(work ? [work] : []),
    ...said(numberAt(dose, 'reserve'), (count) => say('dose.reserve', { count })),
    ...said(numberAt(dose, 'percent'), (percent) => say('dose.percent', { percent: figure(percent) })),
    ...said(numberAt(dose, 'tightness'), (count) => say('dose.tightness', { count })),
    ...said(numberAt(dose, 'restSeconds'), (seconds) => sayDose('rest', { seconds })),
    ...said(numberAt(dose, 'sessionsPerWeek'), (count) => sayDose('week', { count })),
  ].join(' · ');
};
