/** The clinic’s templates beside the exercises, each with the sides it can be used on. */
import { type TemplateSide, templateSides } from '#core/prescribing/clinic-template.ts';
import { say } from '#messages/en/staff/prescribing/templates.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { ClinicTemplate } from '../../answers.ts';
import { addressOf, type ChoiceAddress, searchOf } from '../choose/choice-address.ts';
import { templateDoseInWords } from './template-words.ts';

const sideWords: Readonly<Record<TemplateSide, string>> = {
  saved: say('pick.saved'),
  left: say('pick.left'),
  right: say('pick.right'),
};

interface PickProps {
  readonly patientId: string;
  readonly at: ChoiceAddress;
  readonly templates: readonly ClinicTemplate[];
}

/** Nothing of it has a side: there is nothing to choose. */
const sidesOf = ({ doses }: ClinicTemplate): readonly TemplateSide[] =>
  doses.some(({ side }) => side !== 'both') ? templateSides : ['saved'];

export const TemplatePick = ({ patientId, at, templates }: PickProps) => (
  <Disclosure summary={say('pick.heading', { count: templates.length })} isOpen={at.template !== undefined}>
    {templates.length === 0 ? <p className="soft">{say('pick.none')}</p> : null}
    <ul className="plain-list lined">
      {templates.map((template) => (
        <li key={template.id}>
          <strong>{template.name}</strong>
          <ul className="soft small">
            {template.doses.map((dose) => (
              <li key={templateDoseInWords(dose)}>{templateDoseInWords(dose)}</li>
            ))}
          </ul>
          <p className="choice-ways">
            {sidesOf(template).map((on) => (
              <a
                key={on}
                href={addressOf(patientId, { ...searchOf(at), template: template.id, on })}
                aria-current={at.template === template.id && at.on === on ? 'true' : undefined}
              >
                {sidesOf(template).length === 1 ? say('pick.use') : sideWords[on]}
                <span className="visually-hidden">: {template.name}</span>
              </a>
            ))}
          </p>
        </li>
      ))}
    </ul>
    <p className="small">
      <a href="/templates">{say('pick.manage')}</a>
    </p>
  </Disclosure>
);
