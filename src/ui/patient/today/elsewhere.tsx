/** Another window of this phone writes; here nothing can be begun until it is closed or taken over. */

import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { t } from '../words.ts';

export const Elsewhere = ({ onTakeOver }: { readonly onTakeOver: () => void }) => (
  <Notice tone="care" title={t('elsewhere.title')}>
    <p>{t('elsewhere.text')}</p>
    <Button tone="plain" onClick={onTakeOver}>
      {t('elsewhere.take-over')}
    </Button>
  </Notice>
);
