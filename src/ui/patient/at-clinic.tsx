/** What is for the clinic alone: told with its dose, and nothing of it can be begun here. */
import type { TodayView } from '#api/patient/today-view.ts';
import { isRest } from '#core/decision/left-of-today.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { doseLines, doseTitle } from '#ui/language/dose-text.ts';
import { t, translate } from '#ui/language/words.ts';

/** What goes with an exercise at home as well stands under “Keep in mind”. */
const isUnsaid =
  (exercises: TodayView['exercises']) =>
  ({ id }: TodayView['exercises'][number]['cautions'][number]) =>
    !exercises.some(({ cautions }) => cautions.some((said) => said.id === id));

interface AtClinicProps {
  readonly view: Pick<TodayView, 'atClinic'>;
  /** Exercises whose cautions stand under “Keep in mind” on the same page. */
  readonly beside: TodayView['exercises'];
  /** Said in place of a dose that rests. */
  readonly resting: string;
}

export const AtClinic = ({ view: { atClinic = [] }, beside, resting }: AtClinicProps) =>
  atClinic.length === 0 ? null : (
    <Disclosure summary={t('dose.at-clinic')}>
      <p>{t('dose.at-clinic-note')}</p>
      <ul className="exercises">
        {atClinic.map(({ itemId, title, today, cautions, ...of }) => {
          const dose = today === 'bad-day' ? of.badDay : of.dose;
          return (
            <li key={itemId} className="exercise keep-together">
              <h2>{translate(title)}</h2>
              {isRest(today) ? (
                <p>{resting}</p>
              ) : (
                <>
                  <p className="dose figure">{doseTitle(dose)}</p>
                  <p className="dose-line">{doseLines(dose).join(' · ')}</p>
                </>
              )}
              <ul>
                {cautions.filter(isUnsaid(beside)).map(({ id, text }) => (
                  <li key={id}>{translate(text)}</li>
                ))}
              </ul>
            </li>
          );
        })}
      </ul>
    </Disclosure>
  );
