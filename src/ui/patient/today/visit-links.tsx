/** Questions that wait before a visit stand before the start; what is opened seldom stands at the foot. */

import { LinkButton } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { t } from '../words.ts';

export const QuestionsWait = ({ isWaiting }: { readonly isWaiting: boolean }) =>
  isWaiting ? (
    <Notice title={t('visit.waits')}>
      <LinkButton href="/pre-visit" tone="plain">
        {t('visit.begin-now')}
      </LinkButton>
    </Notice>
  ) : null;

const links = [
  { href: '/pre-visit/consents', text: 'consent.title' },
  { href: '/access-log', text: 'opened.title' },
  { href: '/account', text: 'frame.account' },
] as const;

export const SeldomLinks = () => (
  <ul className="seldom">
    {links.map(({ href, text }) => (
      <li key={href}>
        <a href={href}>{t(text)}</a>
      </li>
    ))}
  </ul>
);
