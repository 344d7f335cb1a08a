/** Every rule of the engine: what it leaves, the threshold in force, who says so, and how often it was overruled here. */
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { RulesTable } from '../answers.ts';
import { effectInWords } from '../review/reason-view.tsx';
import { CitationNote } from '../support-note.tsx';

type Rule = RulesTable['rules'][number];

const Setting = ({ setting }: { readonly setting: Rule['settings'][number] }) => (
  <li>
    {setting.title}: <strong>{setting.value}</strong>
    {setting.isDefault ? ' (default)' : ' (set by this clinic)'}; from {setting.min} to {setting.max}.{' '}
    <span className="soft">{setting.why}</span>
  </li>
);

const overruledInWords = (count: number): string =>
  count === 0
    ? 'Never overridden here.'
    : count === 1
      ? 'Overridden once here.'
      : `Overridden ${count} times here.`;

const RuleView = ({ rule }: { readonly rule: Rule }) => (
  <article className="keep-together stack-close" id={rule.id}>
    <h2>
      {rule.id} {rule.title}
    </h2>
    <p>
      When {rule.threshold}: {effectInWords(rule.effect)}.
    </p>
    {rule.settings.length > 0 ? (
      <ul className="plain-list">
        {rule.settings.map((setting) => (
          <Setting key={setting.id} setting={setting} />
        ))}
      </ul>
    ) : null}
    {rule.restsOn === 'clinic-choice' ? (
      <p className="source-note">
        Uses a clinic setting{rule.citations.length > 0 ? '; related source:' : ', no source.'}
      </p>
    ) : null}
    {rule.citations.map((citation) => (
      <CitationNote key={`${citation.source} ${citation.locator}`} citation={citation} />
    ))}
    <p className="soft">{overruledInWords(rule.overruled)}</p>
  </article>
);

export const RulesScreen = ({ table }: { readonly table: RulesTable }) => (
  <div className="stack-wide">
    <PageHeading>Rules</PageHeading>
    <p className="lead">
      {table.rules.length} rules, version {table.version}. Each rule that applies limits the decision; the
      most cautious one counts. No rule makes a decision bolder, and a missing answer never lets a dose go up.
    </p>
    {table.rules.map((rule) => (
      <RuleView key={rule.id} rule={rule} />
    ))}
  </div>
);
