'use client';
/**
 * A form that cannot be taken before its page’s scripts have come. Its button waits for them, and says so where
 * they are long in coming.
 */
import { type ComponentProps, createContext, useContext, useSyncExternalStore } from 'react';
import { t } from '#ui/language/words.ts';
import { Button, type ButtonProps } from '../button.tsx';

const BeforeScripts = createContext(false);

const never = () => () => undefined;

const useBeforeScripts = (): boolean =>
  useSyncExternalStore(
    never,
    () => false,
    () => true,
  );

interface ScriptedFormProps extends Omit<ComponentProps<'form'>, 'action' | 'method'> {
  /** One of many on its page, with nothing to send before something was pressed. */
  readonly isQuiet?: boolean;
}

export const ScriptedForm = ({ isQuiet, children, ...props }: ScriptedFormProps) => {
  const isBefore = useBeforeScripts();
  return (
    <form {...props} method="post" noValidate>
      <BeforeScripts value={isBefore}>{children}</BeforeScripts>
      {isBefore && !isQuiet ? <p className="until-scripts soft">{t('frame.until-scripts')}</p> : null}
    </form>
  );
};

/** The button that sends a form of either kind. */
export const SendButton = ({ disabled, ...props }: Omit<ButtonProps, 'type'>) => {
  const isBefore = useContext(BeforeScripts);
  return <Button {...props} type="submit" disabled={disabled || isBefore} />;
};
