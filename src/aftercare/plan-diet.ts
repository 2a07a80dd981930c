import type { DietStage, Grounds, ProtocolEntry } from '../model/aftercare-plan.ts';
import { addDays } from '../model/calendar-day.ts';
import { protocolOf } from '../model/protocol-of.ts';
import { clinicGrounds, entryAt } from './grounds.ts';
import type { Setting } from './setting.ts';

/** The clinic's stages with their days. No guideline sets a timetable, so without the clinic there is none. */
export function planDiet(setting: Setting): readonly DietStage[] {
  const { clinic, option, date } = setting;
  const written = protocolOf(clinic.protocol, 'diet', option);
  if (written === undefined) return [];
  return written.practice.map((stage, index) => ({
    ...clinicStage(setting, entryAt('diet', written.option, index)),
    stage: index + 1,
    fromDay: stage.from_day,
    toDay: stage.to_day ?? null,
    starts: addDays(date, stage.from_day),
    lastDay: stage.to_day === undefined ? null : addDays(date, stage.to_day),
  }));
}

function clinicStage(setting: Setting, entry: ProtocolEntry): Grounds & Pick<DietStage, 'entry'> {
  return { ...clinicGrounds(setting, entry, ({ topic }) => topic === 'diet-stage'), entry };
}
