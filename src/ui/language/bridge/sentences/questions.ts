import type { Sentences } from '../translator.ts';

/** Questions before a visit with what can be ticked, in German. Read by nobody yet; a clinic reviews them before use. */
export const questionSentences: Sentences = {
  'Has a doctor told you to hold off exercise at present?':
    'Hat Ihnen eine Ärztin oder ein Arzt gesagt, dass Sie zurzeit nicht trainieren sollen?',
  'In the last four weeks, have you had chest discomfort, fainting or breathlessness that is new or getting worse?':
    'Hatten Sie in den letzten vier Wochen Beschwerden in der Brust, Ohnmacht oder Atemnot, die neu sind oder schlimmer werden?',
  'Do you have heart failure, a rhythm problem, valve disease, a pacemaker or a defibrillator?':
    'Haben Sie Herzschwäche, eine Rhythmusstörung, eine kranke Herzklappe, einen Herzschrittmacher oder einen Defibrillator?',
  'Unstable, worsening, or limiting at little effort':
    'Nicht stabil, wird schlimmer oder bremst schon bei wenig Anstrengung',
  'Heart failure, stable': 'Herzschwäche, stabil',
  'Rhythm problem, such as atrial fibrillation': 'Rhythmusstörung, zum Beispiel Vorhofflimmern',
  'Valve disease': 'Kranke Herzklappe',
  'Pacemaker or defibrillator': 'Herzschrittmacher oder Defibrillator',
  'Has anyone ever told you that you have high blood pressure, even if it is treated and fine now?':
    'Hat Ihnen je jemand gesagt, dass Ihr Blutdruck hoch ist, auch wenn er jetzt behandelt und in Ordnung ist?',
  'Do you have a fever or a chest infection, or feel unwell today?':
    'Haben Sie Fieber oder einen Infekt der Bronchien oder der Lunge, oder fühlen Sie sich heute krank?',
  'Do you have raised pressure inside the skull, a detached retina, or have you had an eye operation recently?':
    'Haben Sie erhöhten Druck im Schädel oder eine abgelöste Netzhaut, oder wurden Sie vor Kurzem am Auge operiert?',
  'Raised pressure inside the skull': 'Erhöhter Druck im Schädel',
  'Detached retina or recent eye operation': 'Abgelöste Netzhaut oder vor Kurzem am Auge operiert',
  'Have you ever had a blood clot in a leg, an arm or a lung?':
    'Hatten Sie je ein Blutgerinnsel in einem Bein, einem Arm oder einer Lunge?',
  'In the last four weeks, or still being treated': 'In den letzten vier Wochen oder noch in Behandlung',
  'Has a doctor named a clotting or bleeding disorder for you, or does one run in your close family?':
    'Wurde bei Ihnen ärztlich eine Störung der Blutgerinnung festgestellt, oder gibt es eine in Ihrer engen Familie?',
  'My own: blood clots too easily': 'Bei mir: Das Blut gerinnt zu leicht',
  'My own: blood clots too slowly': 'Bei mir: Das Blut gerinnt zu langsam',
  'In the close family': 'In der engen Familie',
  'Have you been told that you have antiphospholipid antibodies?':
    'Hat man Ihnen gesagt, dass Sie Antiphospholipid-Antikörper haben?',
  'Do you have sickle-cell disease, or could you carry the trait?':
    'Haben Sie die Sichelzellkrankheit, oder könnten Sie die Anlage dazu tragen?',
  'The disease': 'Die Krankheit',
  'The trait, or perhaps': 'Die Anlage, oder vielleicht',
  'Have you had an operation, stent or graft on the arteries of an arm or leg, or leg pain on walking that eases with rest?':
    'Hatten Sie an den Arterien von Arm oder Bein eine Operation, einen Stent oder einen Gefäßersatz? Oder haben Sie beim Gehen Schmerzen im Bein, die in Ruhe nachlassen?',
  'Known arterial disease, operation, stent or graft':
    'Bekannte Krankheit der Arterien, Operation, Stent oder Gefäßersatz',
  'Leg pain on walking that eases with rest': 'Schmerz im Bein beim Gehen, der in Ruhe nachlässt',
  'Is there a fistula, graft or port for dialysis in a limb?':
    'Haben Sie in einem Arm oder Bein einen Zugang für die Dialyse (Fistel, Gefäßersatz oder Port)?',
  'Were lymph nodes taken out or treated with radiation, or does a limb swell for lymph reasons?':
    'Wurden Lymphknoten entfernt oder bestrahlt, oder schwillt ein Arm oder Bein wegen der Lymphe an?',
  'Do you have bulging veins that ache, or have you had an inflamed vein?':
    'Haben Sie Krampfadern, die schmerzen, oder hatten Sie einmal eine entzündete Vene?',
  'Bulging veins that ache': 'Krampfadern, die schmerzen',
  'An inflamed vein in the past': 'Früher eine entzündete Vene',
  'Is one calf newly swollen, warm or tender?':
    'Ist eine Wade seit Kurzem geschwollen, warm oder druckempfindlich?',
  'Do your fingers or toes turn white and numb in the cold, or have you been told of systemic sclerosis?':
    'Werden Ihre Finger oder Zehen in der Kälte weiß und taub? Oder hat man Ihnen gesagt, dass Sie systemische Sklerose haben?',
  'Have you been told that you have inflamed blood vessels (vasculitis)?':
    'Hat man Ihnen gesagt, dass Sie entzündete Blutgefäße haben (Vaskulitis)?',
  'Since a COVID-19 infection, has a doctor spoken of a raised risk of clots?':
    'Hat seit einer COVID-19-Infektion eine Ärztin oder ein Arzt von einem erhöhten Risiko für Blutgerinnsel gesprochen?',
  'Are you pregnant, might you be, or did you give birth in the last 12 weeks?':
    'Sind Sie schwanger, könnten Sie es sein, oder haben Sie in den letzten 12 Wochen ein Kind geboren?',
  'In the last 12 weeks, have you had an operation, a plaster, or more than three days mostly in bed?':
    'Hatten Sie in den letzten 12 Wochen eine Operation oder einen Gips? Oder lagen Sie in dieser Zeit mehr als drei Tage meist im Bett?',
  'Do you have cancer now, or have you had treatment for it in the last six months?':
    'Haben Sie jetzt Krebs, oder wurden Sie in den letzten sechs Monaten deswegen behandelt?',
  'Do you have diabetes?': 'Haben Sie Diabetes?',
  'Numb feet or hands': 'Taube Füße oder Hände',
  'Bleeding in the eye, or laser treatment': 'Blutung im Auge oder Laserbehandlung',
  'Sugar often far out of range': 'Zucker oft weit außerhalb des Zielbereichs',
  'Do you have kidney disease?': 'Haben Sie eine Nierenkrankheit?',
  'Is there numbness in an arm or leg, or would it be hard for you to say that something feels wrong?':
    'Ist ein Arm oder Bein taub, oder wäre es schwer für Sie, zu sagen, dass sich etwas falsch anfühlt?',
  'Numbness in a limb': 'Ein Arm oder Bein ist taub',
  'Hard to notice or say that something is wrong': 'Schwer zu merken oder zu sagen, dass etwas nicht stimmt',
  'Do you take any of these medicines?': 'Nehmen Sie eines dieser Medikamente?',
  'Blood thinner, or aspirin-like tablet against clots':
    'Blutverdünner oder Tablette gegen Blutgerinnsel, ähnlich wie Aspirin',
  'Hormone pill or patch with oestrogen': 'Hormonpille oder Pflaster mit Östrogen',
  'Testosterone or anabolic steroid': 'Testosteron oder Anabolika',
  'Tablet for blood pressure or the heart, or water tablet':
    'Tablette für den Blutdruck oder das Herz, oder Wassertablette',
  'Insulin, or a tablet that can bring sugar too low':
    'Insulin oder eine Tablette, die den Zucker zu tief senken kann',
  'Cortisone-like steroid for months': 'Kortison oder Ähnliches über Monate',
  'Do you take a JAK inhibitor or a biologic, or have you had a quinolone antibiotic in recent weeks?':
    'Nehmen Sie einen JAK-Hemmer oder ein Biologikum? Oder haben Sie in den letzten Wochen ein Antibiotikum aus der Gruppe der Chinolone genommen?',
  'JAK inhibitor': 'JAK-Hemmer',
  Biologic: 'Biologikum',
  'Quinolone antibiotic in recent weeks': 'Chinolon-Antibiotikum in den letzten Wochen',
  'Have you lost weight without trying, or do you worry that eating or weight has become a struggle?':
    'Haben Sie ungewollt abgenommen, oder machen Sie sich Sorgen, dass Essen oder Gewicht für Sie zum Kampf geworden ist?',
  'Is there an open sore, stitches, a recent break, a skin graft or an infection in an arm or leg?':
    'Haben Sie an Arm oder Bein eine offene Stelle, eine Naht, einen frischen Bruch, eine Hautverpflanzung oder eine Infektion?',
  'Open sore, stitches or skin graft': 'Offene Stelle, Naht oder verpflanzte Haut',
  'A recent break': 'Ein frischer Bruch',
  Infection: 'Infektion',
  'Where a cuff or wrap would sit, is the skin thin or easily torn, or is a joint inflamed?':
    'Ist dort, wo eine Manschette oder ein Wickel säße, die Haut dünn oder leicht verletzlich, oder ist ein Gelenk entzündet?',
  'Is a joint hot, or clearly more swollen than usual, today?':
    'Ist heute ein Gelenk heiß oder deutlich mehr geschwollen als sonst?',
  'Do you have rheumatoid or another inflammatory arthritis?':
    'Haben Sie Rheuma in den Gelenken (rheumatoide Arthritis) oder eine andere entzündliche Arthritis?',
  'With rheumatoid arthritis, has your neck been affected, or does moving it bring tingling in arms or legs?':
    'Bei rheumatoider Arthritis: Ist Ihr Nacken betroffen, oder kribbelt es in Armen oder Beinen, wenn Sie ihn bewegen?',
  'Do you have osteoporosis, or did you break a bone in a small fall?':
    'Haben Sie Osteoporose, oder haben Sie sich bei einem leichten Sturz einen Knochen gebrochen?',
};
