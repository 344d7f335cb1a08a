/** Another window of this phone writes; here nothing can be begun until it is closed or taken over. */
import { Button } from '#ui/shared/button.tsx';
import { Notice } from '#ui/shared/notice.tsx';
import { say } from '#ui/words.ts';

export const Elsewhere = ({ onTakeOver }: { readonly onTakeOver: () => void }) => (
  <Notice tone="care" title={say('elsewhere.title')}>
    <p>{say('elsewhere.text')}</p>
    <Button tone="plain" onClick={onTakeOver}>
      {say('elsewhere.take-over')}
    </Button>
  </Notice>
);
