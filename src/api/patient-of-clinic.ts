/** The patient a call is about: of the own clinic, or nobody, and then what was asked for is audited. */
import { z } from 'zod';
import type { Access } from '#data/access.ts';
import { digestOfIds, noteRefused } from '#data/audit/audit.ts';
import { type Patient, patientOf } from '#data/patients/people.ts';
import { Problem } from './errors.ts';

export const ofPatientId = z.object({ patientId: z.string().min(1).max(64) });

export const requirePatient = async (access: Access, patientId: string, path: string): Promise<Patient> => {
  const patient = await patientOf(access, patientId);
  if (patient) return patient;
  noteRefused(access, { subject: path, detail: { asked: digestOfIds([patientId]) } });
  throw new Problem('not-found', 'There is no such patient in your clinic.');
};
