import { openMatters } from '../../model/aftercare-plan.ts';
import type { AftercarePlan, DietStage, LaterVisit, Visit } from '../../model/aftercare-plan.ts';
import type { Markup } from '../../model/locale.ts';
import type { AdviceCode } from '../../model/protocol-codes.ts';
import {
  freeSentence,
  lowerFirst,
  planOf,
  sayDay,
  sayPeriod,
  saySpan,
  writtenAt,
  upperFirst,
} from './say-aftercare.ts';
import { emergencyFirst, emergencyOrigins, emergencyOriginsShape } from './say-emergency-first.ts';
import { chosenOption } from './scene.ts';
import type { Scene } from './scene.ts';
import { flag, group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineOf, plainRow, rowShape, withDuty } from './shared-shapes.ts';
import type { Line, Row } from './shared-shapes.ts';
import { checkRowsShape } from './view-blood-tests.ts';
import type { CheckRow } from './view-blood-tests.ts';
import { calendarShape, viewCalendars } from './view-calendar.ts';
import { contactNote, contactsOf } from './view-contacts.ts';
import type { NamedContact } from './view-contacts.ts';
import { adviceByPlace, fromGuideline, originsOf, ruleRows } from './view-rules.ts';
import { shortHomecare, unknownAtHome } from './view-short.ts';
import { afterColon, asMarkup, joined, sentence } from './words.ts';

const rows = list(rowShape);

export const homecareShape = group({
  /** The treatment and its day. */
  lead: markup,
  stay: markup,
  /** What the pages come to. */
  short: list(markup),
  /** What nobody can say of this time. */
  unknown: list(markup),
  /** One, or none where nothing happens in the first weeks. */
  calendar: list(calendarShape),
  diet: rows,
  /** Where the visits are, and what to bring. */
  place: markup,
  visits: checkRowsShape,
  /** Which topic says what lines of guidelines are: the first there is that may have one; none where no line is. */
  saysOfGuidelines: group({ visits: flag, medicines: flag, advice: flag }),
  activity: rows,
  medicines: rows,
  advice: rows,
  /** Topics on which neither the clinic nor a guideline says anything; empty if there is none. */
  ask: text,
  contacts: rows,
  /** Which number comes first. */
  emergencyFirst: markup,
  /** Where that was read. */
  emergencyOrigins: optional(emergencyOriginsShape),
  /** Sources of lines that only a guideline says. */
  origins: list(markup),
});
export type HomecareView = Viewed<typeof homecareShape>;

/** The time after the treatment, day by day and topic by topic. */
export function viewHomecare(scene: Scene): HomecareView {
  const plan = planOf(scene);
  const { ofMedicines, atHome: advice } = adviceByPlace(plan.advice);
  const origins = originsOf(scene, [...plan.medicines, ...advice, ...plan.visits, ...plan.laterVisits]);
  return {
    lead: leadOf(scene),
    stay: stayOf(scene),
    short: shortHomecare(scene, plan),
    unknown: unknownAtHome(scene, chosenOption(scene)),
    calendar: viewCalendars(scene),
    diet: plan.diet.map((stage) => stageRow(scene, stage)),
    place: scene.words.say('homecare.visits.place', { address: scene.clinic.clinic.address }),
    visits: [
      ...plan.visits.map((visit) => visitRow(scene, visit)),
      ...plan.laterVisits.map((visit) => laterVisit(scene, visit)),
    ],
    activity: ruleRows(scene, plan.activity),
    medicines: ruleRows(scene, [...plan.medicines, ...ofMedicines]),
    advice: ruleRows(scene, advice),
    ask: topicsToAsk(scene, plan),
    contacts: contactRows(scene),
    emergencyFirst: joined(
      emergencyFirst(scene, [plan.option]) ?? asMarkup(''),
      scene.words.say('aftercare.no_answer', { emergency: scene.clinic.clinic.phones.emergency }),
    ),
    emergencyOrigins: emergencyOrigins(scene, [plan.option]),
    origins,
    saysOfGuidelines: guidelineTopic(plan, origins.length > 0),
  };
}

/** What lines of guidelines are is said once, before any of them. */
function guidelineTopic(
  { visits, laterVisits, medicines }: AftercarePlan,
  isSaid: boolean,
): HomecareView['saysOfGuidelines'] {
  const [hasVisits, hasMedicines] = [visits.length + laterVisits.length > 0, medicines.length > 0];
  return {
    visits: isSaid && hasVisits,
    medicines: isSaid && !hasVisits && hasMedicines,
    advice: isSaid && !hasVisits && !hasMedicines,
  };
}

function leadOf(scene: Scene): Markup {
  const option = chosenOption(scene);
  const { kind } = option.column;
  const key = kind === 'operation' || kind === 'endoscopic' ? 'homecare.lead' : 'homecare.lead_medicine';
  return scene.words.say(key, { option: option.inText, date: scene.format.weekdayDate(planOf(scene).date) });
}

/** How long the stay is; of the treatment and its day the lead has said all. */
function stayOf(scene: Scene): Markup {
  const { words, clinic } = scene;
  const { stay } = planOf(scene);
  const length = stay === null ? undefined : clinic.protocol.stay[stay.option];
  const text =
    length === undefined
      ? afterColon(words, words.say('aftercare.ask_clinic', { clinic: clinic.clinic.name }))
      : freeSentence(scene, length);
  return words.say('common.labelled', { label: words.plain('aftercare.topics.stay'), text });
}

function stageRow(scene: Scene, { entry, starts, lastDay }: DietStage): Row {
  const { name, what } = writtenAt(scene, 'diet', entry);
  const period = sayPeriod(scene, starts, lastDay);
  const lines = [
    ...(period === '' ? [] : [lineOf('strong', sentence(scene.words, asMarkup(period)))]),
    body(scene.words.free(what)),
  ];
  return plainRow({ name: scene.words.free(name), tag: '' }, lines);
}

function visitRow(scene: Scene, visit: Visit): CheckRow {
  const what = visit.entry === null ? undefined : writtenAt(scene, 'follow_up', visit.entry).what;
  return {
    name: upperFirst(scene.format.weekdayDate(visit.date)),
    due: '',
    lines: [
      meetingLine(scene, visit),
      // What a repeated visit is for was said of the first.
      ...(what === undefined || visit.isRepeat ? [] : [body(freeSentence(scene, what))]),
    ],
  };
}

/** With whom and how; a visit that only a guideline asks for says so. */
function meetingLine(scene: Scene, visit: Visit | LaterVisit): Line {
  const said = sentence(scene.words, asMarkup(meeting(scene, visit)));
  if (visit.from === 'clinic') return body(said);
  return body(fromGuideline(visit.facts, joined(said, scene.words.say('aftercare.guideline.visit'))));
}

function meeting({ words, format }: Scene, { with: staff, way }: Pick<Visit, 'with' | 'way'>): string {
  if (staff.length === 0) return words.plain(`aftercare.meet.${way}_any`);
  const who = format.list(
    staff.map((one) => words.plain(`aftercare.staff.${one}`)),
    'and',
  );
  return words.plain(`aftercare.meet.${way}`, { who });
}

/** Visits that go on: the first day after two years, and how often from then on. */
function laterVisit(scene: Scene, visit: LaterVisit): CheckRow {
  const { next, every, lastDay } = visit.then;
  const span = saySpan(scene, every);
  const goesOn =
    lastDay === null
      ? scene.words.say('homecare.goes_on', { span })
      : scene.words.say('homecare.goes_on_until', { span, until: sayDay(scene, lastDay) });
  return {
    name: upperFirst(scene.format.weekdayDate(next.date)),
    due: '',
    lines: [meetingLine(scene, visit), body(goesOn)],
  };
}

/** Topics of which nobody says anything, or of which only a prescriber or the clinic can say what holds. */
function topicsToAsk(scene: Scene, plan: AftercarePlan): string {
  const { words, format } = scene;
  const topics = openMatters(plan).map(({ topic }) => topic);
  const names = topics
    .filter((topic) => !elsewhere.includes(topic))
    .map((topic) => words.plain(`aftercare.topics.${topic}`));
  const habits = unsaidHabits(scene, plan).map((about) => words.plain(`aftercare.advice.${about}`));
  return format.list([...new Set([...names, ...habits])].map(lowerFirst), 'and');
}

/** What people call about after an operation, and no guideline says: a clinic that does not say it is asked. */
const habits = [
  'bowels',
  'travel',
  'sex',
  'caffeine',
  'missed-dose',
  'own-medicines',
] as const satisfies readonly AdviceCode[];

function unsaidHabits(scene: Scene, { advice }: AftercarePlan): readonly AdviceCode[] {
  if (chosenOption(scene).column.kind !== 'operation') return [];
  return habits.filter((habit) => advice.every(({ about }) => about !== habit));
}

/** Topics that other pages hold, or the day before. */
const elsewhere: readonly string[] = [
  'supplements',
  'supplement',
  'blood_tests',
  'blood-test',
  'other-test',
  'warnings',
  'warning-emergency',
  'warning-clinic',
  'emergency-first',
  'call',
  'preparation',
  'liver-diet',
  'time_off',
  'visits',
  'for_life',
];

function contactRows(scene: Scene): readonly Row[] {
  return contactsOf(scene).map((contact) => {
    const note = contactWords(scene, contact);
    return plainRow({ name: contact.name, tag: '' }, [
      { ...withDuty('phone', asMarkup(contact.number)), role: 'number' },
      ...(note === null ? [] : [body(note)]),
    ]);
  });
}

/** As a sentence: what a number is for, if for one sign alone, and when somebody answers. */
function contactWords(scene: Scene, contact: NamedContact): Markup | null {
  const { about, hours } = contact;
  if (about === null) return hours === null ? null : freeSentence(scene, hours);
  const note = contactNote(scene, contact);
  return note === null ? null : sentence(scene.words, note);
}
