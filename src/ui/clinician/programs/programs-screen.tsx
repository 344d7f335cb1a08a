/** Other programs of the clinic: their tokens, one more, and what a program may ask. */
import type { TokenScope } from '#core/clinic/token-scopes.ts';
import { say } from '#messages/en/staff/administration/programs.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { ActButton } from '../../account/act-button.tsx';
import { type ClinicClock, momentInWords } from '../when.ts';
import { TokenForm } from './token-form.tsx';

export interface TokenShown {
  readonly id: string;
  readonly name: string;
  readonly scopes: readonly TokenScope[];
  readonly state: 'open' | 'run-out' | 'withdrawn';
  readonly madeAt: number;
  readonly madeBy: string;
  readonly expiresAt: number;
  readonly endedAt: number | null;
  readonly endedBy: string | null;
}

interface QuestionShown {
  readonly path: string;
  readonly scope: TokenScope;
  readonly summary: string;
  readonly takes: readonly string[];
}

interface ProgramsProps {
  readonly tokens: readonly TokenShown[];
  readonly questions: readonly QuestionShown[];
  readonly document: string;
  readonly clock: ClinicClock;
}

const endInWords = ({ state, expiresAt, endedAt, endedBy }: TokenShown, clock: ClinicClock): string => {
  if (endedAt !== null) return say('token.ended', { name: endedBy ?? '', at: momentInWords(endedAt, clock) });
  return say(state === 'open' ? 'token.holds' : 'token.ran-out', { at: momentInWords(expiresAt, clock) });
};

const scopesInWords = (scopes: readonly TokenScope[]): string =>
  scopes.map((scope) => say(`short.${scope}`)).join(', ');

const Token = ({ token, clock }: { readonly token: TokenShown; readonly clock: ClinicClock }) => (
  <li className="stack-close">
    <h3>{token.name}</h3>
    <p>{say('token.scopes', { scopes: scopesInWords(token.scopes) })}</p>
    <p>{endInWords(token, clock)}</p>
    <p className="soft small">
      {say('token.made', { name: token.madeBy, at: momentInWords(token.madeAt, clock) })}
    </p>
    {token.state === 'open' ? (
      <ActButton
        path="admin.programTokens.withdraw"
        input={{ tokenId: token.id }}
        label={say('withdraw')}
        about={token.name}
        question={say('withdraw.question', { name: token.name })}
      />
    ) : null}
  </li>
);

const Questions = ({ questions, document }: Pick<ProgramsProps, 'questions' | 'document'>) => (
  <section className="stack" aria-labelledby="programs-document">
    <h2 id="programs-document">{say('document')}</h2>
    <p>{say('document.lead', { address: document.replace(/\/[^/]*$/, '') })}</p>
    <p>
      <a href={document}>{say('document.open')}</a>
    </p>
    <DataTable
      caption={say('document.table')}
      hidesCaption
      columns={[
        { key: 'address', title: say('document.address') },
        { key: 'about', title: say('document') },
        { key: 'scope', title: say('document.scope') },
        { key: 'takes', title: say('document.takes') },
      ]}
      rows={questions.map(({ path, scope, summary, takes }) => ({
        key: path,
        cells: [<code key="path">{path}</code>, summary, say(`short.${scope}`), takes.join(', ')],
      }))}
    />
  </section>
);

export const ProgramsScreen = ({ tokens, questions, document, clock }: ProgramsProps) => (
  <div className="stack-wide">
    <PageHeading>{say('title')}</PageHeading>
    <div className="stack-close">
      <p>{say('lead')}</p>
      <p className="soft small">{say('lead.audit')}</p>
    </div>
    <section className="stack" aria-labelledby="programs-tokens">
      <h2 id="programs-tokens">{say('tokens', { count: tokens.length })}</h2>
      {tokens.length === 0 ? <p className="soft">{say('tokens.none')}</p> : null}
      <ul className="plain-list lined stack-wide">
        {tokens.map((token) => (
          <Token key={token.id} token={token} clock={clock} />
        ))}
      </ul>
    </section>
    <section className="stack" aria-labelledby="programs-make">
      <h2 id="programs-make">{say('make')}</h2>
      <TokenForm />
    </section>
    <Questions questions={questions} document={document} />
  </div>
);
