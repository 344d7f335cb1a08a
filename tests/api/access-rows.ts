/**
 * What each procedure answers to each person. "in" means the guards let the call through: it may
 * then answer, or refuse the empty input. A procedure that is not listed here fails the test.
 */
export type Cell = 'in' | 'signed-out' | 'not-yours' | 'not-found' | 'care-team' | 'fresh-sign-in' | 'set-up';
export interface Row {
  readonly clinician: Cell;
  /** The patient of another clinic, asked for by this clinic's clinician. */
  readonly clinicianOnStranger: Cell;
  /** A clinician of a clinic that keeps records to care teams, on a record of another team. */
  readonly outsideTeam: Cell;
  /** The same clinician after giving a reason. */
  readonly openedWithReason: Cell;
  readonly administrator: Cell;
  /** The front desk. */
  readonly reception: Cell;
  /** The front desk on a patient of another clinic. */
  readonly receptionOnStranger: Cell;
  /** A clinician who also administers the clinic. */
  readonly both: Cell;
  /** The same, an hour after the passphrase was last given. */
  readonly bothAnHourLater: Cell;
  /** The same, who has not chosen an own passphrase yet. */
  readonly bothNotSetUp: Cell;
  readonly patient: Cell;
  readonly patientAnHourLater: Cell;
  readonly signedOut: Cell;
}

const ofClinic: Row = {
  clinician: 'in',
  clinicianOnStranger: 'in',
  outsideTeam: 'in',
  openedWithReason: 'in',
  administrator: 'not-yours',
  reception: 'not-yours',
  receptionOnStranger: 'not-yours',
  both: 'in',
  bothAnHourLater: 'in',
  bothNotSetUp: 'set-up',
  patient: 'not-yours',
  patientAnHourLater: 'not-yours',
  signedOut: 'signed-out',
};
const ofRecord: Row = { ...ofClinic, clinicianOnStranger: 'not-found', outsideTeam: 'care-team' };
const ofName: Row = { ...ofRecord, outsideTeam: 'in' };
const freshOnRecord: Row = { ...ofRecord, bothAnHourLater: 'fresh-sign-in' };
const ofStaff: Row = { ...ofClinic, administrator: 'in' };
const freshClinician: Row = { ...ofClinic, bothAnHourLater: 'fresh-sign-in' };
const ofAdministrator: Row = {
  ...ofClinic,
  clinician: 'not-yours',
  clinicianOnStranger: 'not-yours',
  outsideTeam: 'not-yours',
  openedWithReason: 'not-yours',
  administrator: 'in',
};
const freshAdministrator: Row = { ...ofAdministrator, bothAnHourLater: 'fresh-sign-in' };
const ofPatient: Row = {
  ...ofAdministrator,
  administrator: 'not-yours',
  both: 'not-yours',
  bothAnHourLater: 'not-yours',
  patient: 'in',
  patientAnHourLater: 'in',
};
const freshPatient: Row = { ...ofPatient, patientAnHourLater: 'fresh-sign-in' };
const ofPerson: Row = {
  ...ofStaff,
  reception: 'in',
  receptionOnStranger: 'in',
  bothNotSetUp: 'in',
  patient: 'in',
  patientAnHourLater: 'in',
};
/** Names and appointments, of everybody or of one person; a clinician has the record instead. */
const ofReception: Row = {
  ...ofPatient,
  patient: 'not-yours',
  patientAnHourLater: 'not-yours',
  reception: 'in',
  receptionOnStranger: 'in',
};
const ofReceptionPerson: Row = { ...ofReception, receptionOnStranger: 'not-found' };

const freshPerson: Row = {
  ...ofPerson,
  bothAnHourLater: 'fresh-sign-in',
  patientAnHourLater: 'fresh-sign-in',
};

/** Whoever signs in is no program; a program has a token and no sign-in. */
const ofProgram: Row = {
  ...ofReception,
  reception: 'not-yours',
  receptionOnStranger: 'not-yours',
  bothNotSetUp: 'not-yours',
};
const programNames = ['decisions', 'measurements', 'mornings', 'people', 'plan', 'sessions', 'worklist'];

/** Procedures of one place that answer alike. */
const alike = (place: string, names: readonly string[], row: Row): Readonly<Record<string, Row>> =>
  Object.fromEntries(names.map((name) => [`${place}.${name}`, row]));

export const expected: Readonly<Record<string, Row>> = {
  ...alike('account', ['changePassphrase', 'endEverywhere', 'endSession', 'isUncovered'], ofPerson),
  ...alike('account', ['me', 'passkeys', 'prove', 'sessions'], ofPerson),
  'account.removePasskey': freshPerson,
  'admin.care.coveringClinician': ofAdministrator,
  'admin.care.nameCoveringClinician': freshAdministrator,
  'admin.care.wordings': ofAdministrator,
  'admin.care.writeWording': freshAdministrator,
  'admin.clinicDetails.enter': freshAdministrator,
  'admin.clinicDetails.enterHours': freshAdministrator,
  'admin.clinicDetails.get': ofAdministrator,
  'admin.clinicSettings.list': ofStaff,
  'admin.clinicSettings.preview': ofAdministrator,
  'admin.clinicSettings.save': freshAdministrator,
  ...alike('admin.machines', ['list', 'add', 'correct', 'retire', 'bringBack'], ofAdministrator),
  ...alike('admin.programTokens', ['list', 'questions', 'withdraw'], ofAdministrator),
  'admin.programTokens.make': freshAdministrator,
  ...alike('programs', programNames, ofProgram),
  'admin.firstDay.list': ofAdministrator,
  'admin.questionnaires.list': ofAdministrator,
  'admin.questionnaires.retire': freshAdministrator,
  'admin.questionnaires.write': freshAdministrator,
  ...alike('admin.sites', ['add', 'close', 'list'], ofAdministrator),
  'admin.staff.add': freshAdministrator,
  'admin.staff.deactivate': freshAdministrator,
  'admin.staff.list': ofAdministrator,
  'admin.staff.reactivate': freshAdministrator,
  'admin.staff.reset': freshAdministrator,
  'admin.staff.setRoles': freshAdministrator,
  'reception.add': ofReception,
  'reception.appointments': ofReception,
  'reception.book': ofReceptionPerson,
  'reception.changeDetails': ofReceptionPerson,
  'reception.find': ofReception,
  'reception.person': ofReceptionPerson,
  'patient.access.list': ofPatient,
  'patient.consents.get': ofPatient,
  'patient.consents.give': ofPatient,
  'patient.consents.refuse': ofPatient,
  'patient.consents.withdraw': ofPatient,
  'patient.entries.keepMorning': ofPatient,
  'patient.entries.send': ofPatient,
  'patient.history.get': ofPatient,
  'patient.messages.get': ofPatient,
  'patient.phones.end': freshPatient,
  'patient.phones.list': ofPatient,
  'patient.preVisit.questions': ofPatient,
  'patient.preVisit.send': ofPatient,
  'patient.today.get': ofPatient,
  ...alike('patient.exports', ['files', 'feed', 'endFeed'], ofPatient),
  'patient.exports.makeFeed': freshPatient,
  'patient.papers.plan': ofPatient,
  'patient.nutrition.get': ofPatient,
  'patient.papers.record': ofPatient,
  'clinician.calculations.list': ofClinic,
  'clinician.calculations.tryOne': ofClinic,
  ...alike('clinician.inventedPeople', ['get', 'tryOwnRule', 'trySettings'], ofClinic),
  ...alike('clinician.replay', ['everybody', 'settings'], ofClinic),
  ...alike('clinician.replay', ['progress', 'stop'], ofStaff),
  ...alike('clinician.learning', ['get', 'file'], ofStaff),
  ...alike('clinician.replay', ['knownThen', 'ofPatient'], ofRecord),
  ...alike('clinician.rules', ['followed', 'list'], ofClinic),
  'clinician.bookings.book': ofRecord,
  ...alike('clinician.care', ['addEvent', 'addLimit', 'liftLimit', 'list'], ofRecord),
  ...alike('clinician.care', ['preApprove', 'withdrawPreApproval'], ofRecord),
  'clinician.consents.list': ofRecord,
  'clinician.consents.record': ofRecord,
  'clinician.corrections.acknowledgePlan': ofRecord,
  'clinician.corrections.enterInError': ofRecord,
  'clinician.corrections.entries': ofRecord,
  'clinician.corrections.list': ofRecord,
  'clinician.corrections.planOnceSeen': ofRecord,
  ...alike('clinician.drafts', ['drop', 'get', 'save'], ofRecord),
  'clinician.entries.send': ofRecord,
  ...alike('clinician.episodes', ['change', 'list', 'open'], ofRecord),
  ...alike('clinician.handover', ['colleagues', 'get', 'ownPause'], ofRecord),
  ...alike('clinician.outcomes', ['cuffPressures', 'planRetest', 'retests', 'stopRetest'], ofRecord),
  ...alike('clinician.outcomes', ['doseDays', 'get', 'setGoal'], ofRecord),
  ...alike('clinician.homeQuestions', ['ask', 'end', 'get'], ofRecord),
  ...alike('clinician.groupHours', ['list', 'get', 'clinicians', 'plan', 'correct', 'change'], ofClinic),
  ...alike('clinician.groupSessions', ['people', 'takeAlong'], ofClinic),
  ...alike('clinician.groupSessions', ['person', 'send'], ofRecord),
  'clinician.groupHours.add': ofRecord,
  'clinician.groupHours.remove': ofName,
  ...alike('clinician.incidents', ['list', 'file', 'record', 'correct', 'close', 'reopen'], ofStaff),
  'clinician.machines.list': ofClinic,
  'clinician.measurements.forms': ofRecord,
  'clinician.measurements.list': ofRecord,
  'clinician.measurements.record': ofRecord,
  'clinician.measurements.recordEffusion': ofRecord,
  ...alike('clinician.merges', ['choosePlan', 'get', 'merge', 'undo'], ofRecord),
  ...alike('clinician.danger', ['get', 'pause', 'recordContact', 'report'], ofRecord),
  ...alike('clinician.danger', ['resume'], ofRecord),
  'clinician.documents.get': ofRecord,
  ...alike('clinician.exports', ['files', 'feed', 'endFeed'], ofRecord),
  ...alike('clinician.papers', ['discharge', 'flareNote', 'handover', 'letter'], ofRecord),
  ...alike('clinician.papers', ['plan', 'record', 'selfManagement'], ofRecord),
  ...alike('clinician.imports', ['list', 'check', 'take', 'undo'], ofRecord),
  'clinician.people.bar': ofRecord,
  'clinician.people.changeDetails': ofRecord,
  'clinician.people.create': ofClinic,
  'clinician.people.details': ofRecord,
  'clinician.people.get': ofRecord,
  'clinician.people.list': ofClinic,
  'clinician.people.saveProfile': ofRecord,
  'clinician.phones.endPhone': ofRecord,
  'clinician.phones.invite': ofRecord,
  'clinician.phones.list': ofRecord,
  'clinician.phones.withdraw': ofRecord,
  'clinician.prescriptions.catalogue': ofRecord,
  'clinician.prescriptions.choices': ofRecord,
  'clinician.prescriptions.end': ofRecord,
  'clinician.prescriptions.saveDraft': ofRecord,
  'clinician.prescriptions.list': ofRecord,
  'clinician.prescriptions.planning': ofRecord,
  'clinician.prescriptions.programme': ofRecord,
  'clinician.prescriptions.propose': ofRecord,
  'clinician.prescriptions.saveProgramme': ofRecord,
  'clinician.prescriptions.sign': ofRecord,
  'clinician.preVisits.confirm': ofRecord,
  'clinician.preVisits.get': ofRecord,
  'clinician.recordFile.list': ofRecord,
  'clinician.recordFile.make': freshOnRecord,
  ...alike('clinician.review', ['certificate', 'confirmEntry'], ofRecord),
  'clinician.review.setBaseline': ofRecord,
  'clinician.review.get': ofRecord,
  'clinician.review.respond': ofRecord,
  'clinician.review.summary': ofRecord,
  'clinician.review.whatWouldChange': ofRecord,
  'clinician.review.write': ofRecord,
  'clinician.screening.askAgain': ofRecord,
  'clinician.screening.changeAnswers': ofRecord,
  'clinician.screening.clear': freshOnRecord,
  'clinician.screening.list': ofRecord,
  'clinician.screening.outcomes': ofRecord,
  'clinician.screening.record': ofRecord,
  'clinician.screening.sheet': ofRecord,
  'clinician.shortSigns.approve': freshClinician,
  'clinician.shortSigns.state': ofStaff,
  'clinician.shortSigns.withdraw': freshClinician,
  'clinician.team.get': ofRecord,
  'clinician.team.open': ofName,
  'clinician.team.emergencyAccesses': ofClinic,
  'clinician.team.set': ofRecord,
  'clinician.team.setSite': ofRecord,
  ...alike('clinician.templates', ['list', 'rename', 'withdraw', 'bringBack'], ofClinic),
  ...alike('clinician.templates', ['save', 'proposed', 'add'], ofRecord),
  'clinician.visits.begin': ofRecord,
  'clinician.visits.checkHome': ofRecord,
  'clinician.visits.firstVisit': ofRecord,
  'clinician.visits.homeEligibility': ofRecord,
  'clinician.visits.saveFirstVisit': ofRecord,
  'clinician.visits.list': ofRecord,
  'clinician.nutrition.get': ofRecord,
  'clinician.nutrition.show': ofRecord,
  'clinician.nutrition.takeBack': ofRecord,
  'clinician.review.earlierDoses': ofRecord,
  'clinician.visits.watch': ofRecord,
  'clinician.distance.guide': ofRecord,
  'clinician.distance.record': ofRecord,
  ...alike('clinician.protocols', ['list', 'begin', 'writePhase', 'confirm'], ofRecord),
  ...alike('clinician.protocols', ['end'], ofRecord),
  ...alike('clinician.letters', ['declareVoid', 'get', 'list', 'save'], ofRecord),
  ...alike('clinician.letters', ['sign', 'summarise'], ofRecord),
  'clinician.visitNotes.list': ofRecord,
  'clinician.visitNotes.record': ofRecord,
  'clinician.prescriptions.withdrawSignature': ofRecord,
  'clinician.worklist.acknowledge': ofRecord,
  'clinician.worklist.assign': ofRecord,
  'clinician.worklist.filters': ofClinic,
  'clinician.worklist.groups': ofClinic,
  'clinician.worklist.list': ofClinic,
  'clinician.worklist.snooze': ofRecord,
  'clinician.worklist.take': ofRecord,
  'clinician.worklist.takeBack': ofRecord,
  'clinician.worklist.unsnooze': ofRecord,
};
