/** The log of the boat in hand by stage, and what all of it comes to. */
import { byStage, linesOf, type LogStage, type LogSum, sumOf } from '../../notebook/log/by-stage';
import type { Bench } from '../bench';
import { NO_STAGE, stageOf, stagesOfLog } from './stages';

/** Tracked. */
export function reportOf(bench: Bench): { readonly stages: readonly LogStage[]; readonly all: LogSum } {
  const { log } = bench.book.state.value;
  const stages = stagesOfLog(bench);
  const titles = stages.map(({ title }) => title);
  return {
    stages: byStage(log, (cell) => stageOf(cell, stages, bench), titles, NO_STAGE),
    all: sumOf(linesOf(log)),
  };
}
