/** When each measured cuff pressure is to be measured again, and why where that is now. */
import type { CuffDue } from '#core/prescribing/occlusion/pressure/remeasure-plan.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { capital } from '../capital.ts';

interface Props {
  readonly patientId: string;
  readonly cuffs: readonly CuffDue[];
  readonly day: Day;
}

const cuffInWords = ({ side, limb, cuffWidthCm, position }: CuffDue): string =>
  say('cuffs.of', { where: capital(`${side} ${limb}`), width: cuffWidthCm, position });

const dueInWords = ({ why, usableTo }: CuffDue, day: Day): string =>
  why === null ? say('cuffs.usable', { date: dayInWords(usableTo, day) }) : say('cuffs.again');

/** Nothing where no cuff pressure was ever measured. */
export const CuffPressures = ({ patientId, cuffs, day }: Props) =>
  cuffs.length === 0 ? null : (
    <section className="stack-close">
      <h2>{say('cuffs.title')}</h2>
      <ul className="plain-list lined">
        {cuffs.map((cuff) => (
          <li key={cuffInWords(cuff)} className="keep-together">
            <a href={`/patients/${patientId}/measurements?kind=limb-occlusion-pressure`}>
              {cuffInWords(cuff)}
            </a>{' '}
            <strong>{dueInWords(cuff, day)}</strong>{' '}
            <span className="soft">
              {say('retest.last', { date: dayInWords(cuff.lastOn, day) })}
              {cuff.why === null ? '' : `. ${cuff.why}`}
            </span>
          </li>
        ))}
      </ul>
      <p className="soft">{say('cuffs.note')}</p>
    </section>
  );
