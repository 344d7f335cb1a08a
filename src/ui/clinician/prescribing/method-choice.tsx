/** The three methods with what screening leaves of each; a closed one says why and stays readable. */
import { type Eligibility, type Method, methods } from '#core/prescribing/methods.ts';
import { listed } from '#core/review/plain-words.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { groupedReasons } from '../screening/outcome-table.tsx';
import { eligibilityStatus, methodInWords } from '../words.ts';

const about: Readonly<Record<Method, string>> = {
  variation: say('about.variation'),
  'low-load': say('about.low-load'),
  occlusion: say('about.occlusion'),
};

const isOpen = (row: MethodOutcome): boolean => row.eligibility.startsWith('open');

/** The least that is said of the limbs it is open on: precautions on one are not left out. */
const eligibilityOf = (outcomes: readonly MethodOutcome[]): Eligibility => {
  const open = outcomes.filter(isOpen);
  if (open.length === 0)
    return outcomes.some((row) => row.eligibility === 'closed-until-cleared')
      ? 'closed-until-cleared'
      : 'closed';
  return open.every((row) => row.eligibility === 'open') ? 'open' : 'open-with-precautions';
};

const eligibilityInWords = (word: string, outcomes: readonly MethodOutcome[]): string => {
  const open = outcomes.filter(isOpen).map((row) => `${row.side} ${row.limb}`);
  if (open.length === 0) return word;
  return open.length === 4
    ? say('open-everywhere', { eligibility: word })
    : say('open-on', { eligibility: word, limbs: listed(open) });
};

const MethodLine = ({
  method,
  outcomes,
  href,
  isChosen,
}: {
  readonly method: Method;
  readonly outcomes: readonly MethodOutcome[];
  readonly href: string;
  readonly isChosen: boolean;
}) => {
  const contraindications = groupedReasons(outcomes).filter((reason) =>
    reason.eligibility.startsWith('closed'),
  );
  const { word, shape, tone } = eligibilityStatus(
    eligibilityOf(outcomes),
    outcomes.flatMap((row) => row.reasons),
  );
  return (
    <li className="method stack-close">
      <p className="row">
        <a className="method-name" href={href} aria-current={isChosen ? 'true' : undefined}>
          {methodInWords[method]}
        </a>
        <StatusTag shape={shape} tone={tone}>
          {eligibilityInWords(word, outcomes)}
        </StatusTag>
      </p>
      <p className="soft">{about[method]}</p>
      {contraindications.length > 0 ? (
        <ul>
          {contraindications.map((reason) => (
            <li key={`${reason.code} ${reason.text}`}>
              {reason.text}{' '}
              <span className="soft">
                ({reason.limbs.length === 4 ? say('closed-everywhere') : listed(reason.limbs)})
              </span>
            </li>
          ))}
        </ul>
      ) : null}
    </li>
  );
};

export const MethodChoice = (props: {
  readonly patientId: string;
  readonly outcomes: readonly MethodOutcome[];
  readonly chosen: Method | null;
}) => (
  <ul className="methods">
    {methods.map((method) => (
      <MethodLine
        key={method}
        method={method}
        outcomes={props.outcomes.filter((row) => row.method === method)}
        href={`/patients/${props.patientId}/prescribe?method=${method}`}
        isChosen={props.chosen === method}
      />
    ))}
  </ul>
);
