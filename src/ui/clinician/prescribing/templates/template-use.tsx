/** A template for this patient: each dose whole with its cautions, and what is left out with every reason. */
import { dosesBeside } from '#core/prescribing/beside.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { say } from '#messages/en/staff/prescribing/templates.ts';
import type { ProposedTemplate, Version } from '../../answers.ts';
import { methodInWords } from '../../words.ts';
import { addressOf, type ChoiceAddress, searchOf } from '../choose/choice-address.ts';
import type { Held } from '../held.ts';
import { ProposalCard } from '../proposal-card.tsx';
import { AddTemplate } from './add-template.tsx';

export interface TemplateUseProps {
  readonly patientId: string;
  readonly at: ChoiceAddress;
  readonly template: ProposedTemplate;
  readonly inForce: readonly Version[];
  /** Days the planned week gives an exercise that is new; null = no week was planned. */
  readonly plannedDaysOfNew: number | null;
  readonly heldBy: (itemId: string | null) => readonly Held[];
}

type Possible = Extract<ProposedTemplate['doses'][number], { isPossible: true }>;
type LeftOut = Extract<ProposedTemplate['doses'][number], { isPossible: false }>;

const One = ({ dose, props }: { readonly dose: Possible; readonly props: TemplateUseProps }) => {
  const before = props.inForce.find(({ itemId }) => itemId === dose.itemId) ?? null;
  return (
    <li className="proposal">
      <h3>{dose.title}</h3>
      <ProposalCard
        proposed={dose.proposed}
        inForce={before}
        beside={dosesBeside(dose.proposed.dose, dose.itemId, props.inForce)}
        held={props.heldBy(dose.itemId)}
        plannedDays={before ? before.plannedDays : props.plannedDaysOfNew}
      />
    </li>
  );
};

/** To the form of a dose, to the version in force where there is one of this exercise, method and side. */
const formOf = (
  { at, patientId, inForce }: TemplateUseProps,
  { request, method, place }: LeftOut,
): string => {
  const { exerciseId, side } = request as { exerciseId: string; side: Dose['side'] };
  const version = inForce.find(
    ({ dose }) => dose.exerciseId === exerciseId && dose.method === method && dose.side === side,
  );
  const line = version ? { line: version.itemId } : {};
  const { template, on } = at;
  return addressOf(patientId, { ...searchOf(at), exerciseId, side, method, ...line, template, on, place });
};

const Left = (props: TemplateUseProps & { readonly left: readonly LeftOut[] }) =>
  props.left.length === 0 ? null : (
    <section className="stack-close">
      <h3>{say('use.left-out')}</h3>
      <ul className="plain-list lined">
        {props.left.map((dose) => (
          <li key={dose.place}>
            <strong>{dose.title}</strong> <span className="soft">({methodInWords[dose.method]})</span>
            {dose.reasons.map((reason) => (
              <p key={reason}>{reason}</p>
            ))}
            {dose.mayBeTyped ? (
              <p className="small screen-only">
                <a href={formOf(props, dose)}>
                  {say('use.complete')}
                  <span className="visually-hidden">: {dose.title}</span>
                </a>
              </p>
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  );

export const TemplateUse = (props: TemplateUseProps) => {
  const { template, at, patientId } = props;
  const possible = template.doses.filter((dose): dose is Possible => dose.isPossible);
  const left = template.doses.filter((dose): dose is LeftOut => !dose.isPossible);
  return (
    <section className="stack-close" aria-labelledby="template-heading">
      <div className="side-head">
        <h2 id="template-heading">{say('use.heading', { name: template.name })}</h2>
        <p className="soft">{say('use.about')}</p>
      </div>
      {possible.length === 0 ? <p>{say('use.none')}</p> : null}
      <ul className="plain-list stack-close">
        {possible.map((dose) => (
          <One key={dose.place} dose={dose} props={props} />
        ))}
      </ul>
      <Left {...props} left={left} />
      {possible.length > 0 && at.template ? (
        <AddTemplate
          patientId={patientId}
          templateId={at.template}
          on={at.on ?? 'saved'}
          shown={possible.map(({ place, proposed }) => ({ place, dose: proposed.dose }))}
        />
      ) : null}
      <p className="small screen-only">
        <a href={addressOf(patientId, searchOf(at))}>{say('use.close')}</a>
      </p>
    </section>
  );
};
