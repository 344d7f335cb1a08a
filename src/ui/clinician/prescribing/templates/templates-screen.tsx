/** The clinic’s templates: what each holds, who saved it and what became of it. */
import { say } from '#messages/en/staff/prescribing/templates.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { ClinicTemplate } from '../../answers.ts';
import { type ClinicClock, momentInWords } from '../../when.ts';
import { OfferedActs, WithdrawnActs } from './template-acts.tsx';
import { templateDoseInWords } from './template-words.ts';

interface OneProps {
  readonly template: ClinicTemplate;
  readonly clock: ClinicClock;
}

const History = ({ template, clock }: OneProps) => (
  <div className="soft small">
    <p>{say('saved-by', { name: template.savedBy, time: momentInWords(template.savedAt, clock) })}</p>
    {template.earlierNames.map(({ name, until, byName }) => (
      <p key={until}>
        {say('renamed-by', { before: name, time: momentInWords(until, clock), name: byName })}
      </p>
    ))}
    {template.withdrawn ? (
      <p>
        {say('withdrawn-by', {
          name: template.withdrawn.byName,
          time: momentInWords(template.withdrawn.at, clock),
        })}
      </p>
    ) : null}
  </div>
);

const One = (props: OneProps) => {
  const { template } = props;
  return (
    <li className="stack-close">
      <h3>{template.name}</h3>
      <ul className="small">
        {template.doses.map((dose) => (
          <li key={templateDoseInWords(dose)}>{templateDoseInWords(dose)}</li>
        ))}
      </ul>
      <History {...props} />
      {template.withdrawn ? (
        <WithdrawnActs templateId={template.id} />
      ) : (
        <OfferedActs templateId={template.id} name={template.name} />
      )}
    </li>
  );
};

export const TemplatesScreen = (props: {
  readonly templates: readonly ClinicTemplate[];
  readonly clock: ClinicClock;
}) => {
  const { templates, clock } = props;
  const offered = templates.filter(({ withdrawn }) => !withdrawn);
  const withdrawn = templates.filter((template) => template.withdrawn);
  return (
    <div className="stack-wide">
      <PageHeading>{say('title')}</PageHeading>
      <div className="stack-close">
        <p>{say('about')}</p>
        <p className="soft">{say('not-kept')}</p>
      </div>
      <section className="stack">
        <h2>{say('offered', { count: offered.length })}</h2>
        {offered.length === 0 ? <p className="soft">{say('none')}</p> : null}
        <ul className="plain-list lined">
          {offered.map((template) => (
            <One key={template.id} template={template} clock={clock} />
          ))}
        </ul>
      </section>
      <section className="stack">
        <h2>{say('withdrawn')}</h2>
        {withdrawn.length === 0 ? <p className="soft">{say('withdrawn.none')}</p> : null}
        <ul className="plain-list lined">
          {withdrawn.map((template) => (
            <One key={template.id} template={template} clock={clock} />
          ))}
        </ul>
      </section>
    </div>
  );
};
