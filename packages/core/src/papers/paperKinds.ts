import type { Paper } from "./Paper.ts";
import type { PaperSource } from "./PaperSource.ts";
import { assemblySequence } from "./sheets/assemblySequence.ts";
import { balanceCard } from "./sheets/balanceCard.ts";
import { changeRecord } from "./sheets/changeRecord.ts";
import { engineRecord } from "./sheets/engineRecord.ts";
import { firstRunSheet } from "./sheets/firstRunSheet.ts";
import { limitsCard } from "./sheets/limitsCard.ts";
import { orderList } from "./sheets/orderList.ts";
import { proposal } from "./sheets/proposal.ts";
import { receivingSheet } from "./sheets/receivingSheet.ts";
import { serviceLog } from "./sheets/serviceLog.ts";
import { torqueSheet } from "./sheets/torqueSheet.ts";
import { trialSheet } from "./sheets/trialSheet.ts";
import { workOrder } from "./sheets/workOrder.ts";

/** The papers of the job by id, in the order in which they are needed; undefined where a build gives one nothing to say. */
export const paperKinds: Readonly<Record<string, (source: PaperSource) => Paper | undefined>> = {
  proposal: proposal,
  "order-list": orderList,
  "receiving-sheet": receivingSheet,
  "work-order": workOrder,
  "trial-sheet": trialSheet,
  "balance-card": balanceCard,
  "torque-sheet": torqueSheet,
  "assembly-sequence": assemblySequence,
  "first-run-sheet": firstRunSheet,
  "limits-card": limitsCard,
  "engine-record": engineRecord,
  "service-log": serviceLog,
  "change-record": changeRecord,
};

export const paperIds: readonly string[] = Object.keys(paperKinds);
