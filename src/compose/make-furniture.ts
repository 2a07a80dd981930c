import type { ClinicProfile } from '../model/clinic.ts';
import type { Furniture } from '../model/document.ts';
import { plainWords } from '../model/plain-words.ts';
import type { DocumentTemplate } from './load-templates.ts';
import type { Scene } from './view/scene.ts';

/** Header, footer and tab of every page. The renderer puts the page number into `{page}` and `{pages}`. */
export function makeFurniture(scene: Scene, template: DocumentTemplate, openPoints: number): Furniture {
  const { words, format, clinic } = scene;
  const { day, out_of_hours: night, emergency } = clinic.clinic.phones;
  const date = format.date(scene.date);
  const clinician = template.audience === 'clinician';
  const start = clinician
    ? words.plain('common.furniture.clinician_start', { reference: scene.case.case })
    : scene.case.patient.name;
  const header = words.plain(template.header, { date, version: scene.evidence.version });
  return {
    header: { start, end: header },
    headerOnFirstPage: template.headerOnFirstPage,
    footer: {
      call: words.plain('common.furniture.call', { day, night, emergency }),
      deferral: words.plain(clinician ? 'common.furniture.clinician_deferral' : 'common.furniture.deferral'),
      id: words.plain('common.furniture.id', {
        id: scene.documentId,
        next: format.monthYear(scene.evidence.nextReview),
      }),
      page: words.plain('common.furniture.page'),
    },
    phones: [day, night, emergency],
    otherPhones: otherPhones(clinic),
    ...(scene.state === 'final'
      ? {}
      : { tab: words.plain(`common.furniture.tab_${scene.state}`, { count: openPoints }) }),
    ...(scene.state === 'draft' ? { draftEdges: draftEdges(scene) } : {}),
    continued: words.plain('common.furniture.continued'),
  };
}

/** A draft says so to its reader, and in English to whoever hands it out. */
function draftEdges({ words, otherLocales = [] }: Scene): readonly [string, string] {
  const own = words.plain('common.furniture.draft_edge');
  const english = otherLocales.find(({ tag }) => tag === 'en');
  return [
    own,
    english === undefined ? own : plainWords(english.translator.text('common.furniture.draft_edge')),
  ];
}

function otherPhones(clinic: ClinicProfile): readonly string[] {
  const all = [
    ...Object.values(clinic.protocol.call).flatMap((calls) => calls.map(({ phone }) => phone)),
    ...clinic.second_opinion.map(({ phone }) => phone),
    ...Object.values(clinic.under_study).map(({ contact }) => contact),
    ...(clinic.language_notice === null ? [] : [clinic.language_notice.phone]),
  ];
  return [...new Set(all)];
}
