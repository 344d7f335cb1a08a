/** Every rule of the engine: what it leaves, the threshold in force, who says so, and how often it was overruled here. */
import { say } from '#messages/en/staff/rules.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { InventedPeople, RulesTable } from '../answers.ts';
import { effectInWords } from '../review/reason-view.tsx';
import { CitationNote } from '../support-note.tsx';
import { InventedPeopleView } from './invented/invented-people.tsx';

type Rule = RulesTable['rules'][number];

const Setting = ({ setting }: { readonly setting: Rule['settings'][number] }) => (
  <li>
    {setting.title}: <strong>{setting.value}</strong>{' '}
    {setting.isDefault
      ? say('setting.default', { min: setting.min, max: setting.max })
      : say('setting.own', { min: setting.min, max: setting.max })}{' '}
    <span className="soft">{setting.why}</span>
  </li>
);

const overruledInWords = (count: number): string =>
  count === 0 ? say('overridden-never') : count === 1 ? say('overridden-once') : say('overridden', { count });

const RuleView = ({ rule }: { readonly rule: Rule }) => (
  <article className="keep-together stack-close" id={rule.id}>
    <h2>
      {rule.id} {rule.title}
    </h2>
    <p>{say('when', { threshold: rule.threshold, effect: effectInWords(rule.effect) })}</p>
    {rule.settings.length > 0 ? (
      <ul className="plain-list">
        {rule.settings.map((setting) => (
          <Setting key={setting.id} setting={setting} />
        ))}
      </ul>
    ) : null}
    {rule.restsOn === 'clinic-choice' ? (
      <p className="source-note">
        {rule.citations.length > 0 ? say('own-setting-sourced') : say('own-setting')}
      </p>
    ) : null}
    {rule.citations.map((citation) => (
      <CitationNote key={`${citation.source} ${citation.locator}`} citation={citation} />
    ))}
    <p className="soft">{overruledInWords(rule.overruled)}</p>
  </article>
);

interface RulesScreenProps {
  readonly table: RulesTable;
  readonly invented: InventedPeople;
}

export const RulesScreen = ({ table, invented }: RulesScreenProps) => (
  <div className="stack-wide">
    <PageHeading>Rules</PageHeading>
    <p className="lead">{say('lead', { count: table.rules.length, version: table.version })}</p>
    <p>
      <a href="#invented-people">{say('to-invented')}</a>
    </p>
    {table.isVersion3 ? <p>{say('version-3')}</p> : null}
    {table.rules.map((rule) => (
      <RuleView key={rule.id} rule={rule} />
    ))}
    <InventedPeopleView answer={invented} />
  </div>
);
