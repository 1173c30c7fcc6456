import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { TYPING_OFF, takeLargeChange, takeRow, type TypingState } from "./typingState";
import { watchTyping } from "./watchTyping";

export async function startTyping(pane: Pane): Promise<void> {
  const take = (next: (typing: TypingState) => TypingState) =>
    pane.change((state) => ({ ...state, check: { ...state.check, typing: next(state.check.typing) } }));
  take(() => ({ ...TYPING_OFF, on: true }));
  try {
    const stop = await watchTyping(pane.workbook, {
      today: pane.today,
      read: async () => (await pane.held.read()).season,
      onRow: (row) => take((typing) => takeRow(typing, row)),
      onLargeChange: (sheet) => take((typing) => takeLargeChange(typing, sheet)),
      onFailure: (failure) =>
        void pane.attempt(() => {
          throw failure;
        }),
    });
    if (pane.state.check.typing.on) pane.keepWatch("typing", stop);
    else await stop();
  } catch (failure) {
    take(() => TYPING_OFF);
    throw failure;
  }
}

export async function stopTyping(pane: Pane): Promise<void> {
  changePage(pane, "check", { typing: TYPING_OFF });
  await pane.endWatch("typing");
}
