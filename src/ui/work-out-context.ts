// The worksheet that a field belongs to, without handing it through every row in between.
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { WorkOut } from "./work-out-state.ts";

const WorkOutContext = createContext<WorkOut | null>(null);
export const WorkOutProvider = WorkOutContext.Provider;

export function useWorkOut(): WorkOut {
  const workOut = useContext(WorkOutContext);
  if (!workOut) throw new Error("a field stands outside of any worksheet");
  return workOut;
}
