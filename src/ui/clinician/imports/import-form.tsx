'use client';
/** A file to take in: how it is written is said, it is read through, what is asked is answered, and then it is taken. */
import type { ChangeEvent, FormEvent } from 'react';
import type { QuestionId } from '#exchange/import/questions.ts';
import { say } from '#messages/en/staff/exchange/imports.ts';
import { Asked } from '#ui/account/asked.tsx';
import type { Asking } from '#ui/account/use-asking.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CheckField } from '#ui/design-system/checkbox-group.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import type { LookedThrough } from '../answers.ts';
import { base64Of, type FormatChoice, formats, marks, mostBytes, type Typed } from './import-input.ts';
import { ImportReport } from './import-report.tsx';
import { useImport } from './use-import.ts';

interface FieldsProps {
  readonly typed: Typed;
  readonly asking: Asking;
  readonly onType: (typed: Typed) => void;
}

const FileField = ({ typed, asking, onType }: FieldsProps) => {
  const choose = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const [file] = target.files ?? [];
    if (!file) return onType({ ...typed, file: null });
    if (file.size > mostBytes) {
      asking.t([{ field: 'file', text: say('file-too-long') }]);
      return onType({ ...typed, file: null });
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    asking.forget();
    onType({ ...typed, file: { name: file.name.slice(0, 120), base64: base64Of(bytes) } });
  };
  return (
    <TextField
      name="file"
      type="file"
      label={say('file')}
      hint={say('file-hint')}
      error={asking.errorOf('file')}
      onChange={(event) => void choose(event)}
    />
  );
};

const TableFields = ({ typed, asking, onType }: FieldsProps) => (
  <>
    {marks.map(({ name, options }) => (
      <SelectField
        key={name}
        name={name}
        label={say(name)}
        options={options}
        value={typed.marks[name] ?? ''}
        error={asking.errorOf(name)}
        onChange={({ target }) => onType({ ...typed, marks: { ...typed.marks, [name]: target.value } })}
      />
    ))}
    <TextField
      name="map"
      label={say('columns')}
      hint={say('columns-hint')}
      maxLength={1000}
      value={typed.map}
      error={asking.errorOf('map')}
      onChange={({ target }) => onType({ ...typed, map: target.value })}
    />
  </>
);

const Fields = (props: FieldsProps) => {
  const { typed, asking, onType } = props;
  return (
    <>
      <FileField {...props} />
      <SelectField
        name="format"
        label={say('format')}
        options={formats}
        value={typed.format}
        error={asking.errorOf('format')}
        onChange={({ target }) => onType({ ...typed, format: target.value as FormatChoice })}
      />
      {typed.format === 'csv' ? <TableFields {...props} /> : null}
    </>
  );
};

interface FoundProps {
  readonly looked: LookedThrough;
  readonly confirmed: readonly QuestionId[];
  readonly leavesOutFaulty: boolean;
  readonly onConfirm: (id: QuestionId, isRight: boolean) => void;
  readonly onLeaveOut: (leavesOut: boolean) => void;
  readonly onUse: (map: string) => void;
  readonly onTake: () => void;
}

const Found = ({ looked, leavesOutFaulty, onLeaveOut, onUse, onTake, ...rest }: FoundProps) => (
  <>
    <ImportReport looked={looked} {...rest} />
    {looked.mapped.some(({ isGuessed }) => isGuessed) ? (
      <Button
        tone="plain"
        onClick={() => onUse(looked.mapped.map(({ name, heading }) => `${name}=${heading}`).join(', '))}
      >
        {say('use-these-columns')}
      </Button>
    ) : null}
    {looked.mapped.length > 0 && looked.report.faultyPlaces > 0 ? (
      <CheckField
        name="leave-out"
        label={say('leave-out')}
        isChecked={leavesOutFaulty}
        onSwitch={onLeaveOut}
      />
    ) : null}
    <Button onClick={onTake}>{say('take')}</Button>
  </>
);

export const ImportForm = ({ patientId }: { readonly patientId: string }) => {
  const at = useImport(patientId);
  const { asking, typed, type, looked, confirmed, leavesOutFaulty } = at;
  const use = (map: string) => {
    type({ ...typed, map });
    at.look({ ...typed, map });
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    at.look(typed);
  };
  return (
    <ScriptedForm className="stack" onSubmit={submit}>
      <Asked asking={asking} />
      {at.isTaken ? <Notice title={say('taken')} isAnnounced /> : null}
      <Fields typed={typed} asking={asking} onType={type} />
      <SendButton tone="plain">{say('look')}</SendButton>
      {looked ? (
        <Found
          {...{ looked, confirmed, leavesOutFaulty }}
          {...{ onConfirm: at.confirm, onLeaveOut: at.setLeavesOut, onUse: use, onTake: at.take }}
        />
      ) : null}
    </ScriptedForm>
  );
};
