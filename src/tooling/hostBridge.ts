/**
 * A stand-in for the bridge between Excel and its custom-functions runtime, so that Microsoft's own
 * custom-functions-runtime.js (@microsoft/office-js 1.1.110) batches, calls and serialises in a plain browser. The
 * messages were worked out by reading that file: type 1 is a request of the runtime, 2 the answer to it, 3 calls that
 * Excel makes. A call's flags say that errors (4) and data types (8) may come in.
 */

/** What comes back for one call. */
export type HostAnswer = { ok: true; value: unknown } | { ok: false; message: string; code: number };

export interface HostBridge {
  /** Calls one function by its id, each argument as the runtime gets it from Excel. */
  call(id: string, args: unknown[], flags?: number): Promise<HostAnswer>;
  /** How many messages with results the runtime has sent. */
  batches: number;
}

/** Runs in the page before the runtime's script, which looks for `_richApiNativeBridge`. */
export const installHostBridge = (): void => {
  let lastId = 0;
  const waiting = new Map<number, (answer: HostAnswer) => void>();
  const bridge = {
    batches: 0,
    onMessageFromHost: (_text: string): void => undefined,
    sendMessageToHost(text: string): void {
      const message = JSON.parse(text);
      if (message.type !== 1) return;
      const actions = message.message.body.Actions || [];
      for (const action of actions) {
        if (action.Name !== "SetInvocationArrayResults") continue;
        bridge.batches += 1;
        for (const [id, ok, value, code] of action.ArgumentInfo.Arguments[0]) {
          waiting.get(id)?.(ok ? { ok, value } : { ok, message: value, code });
          waiting.delete(id);
        }
      }
      const results = actions.map((action: { Id: number }) => ({ ActionId: action.Id, Value: null }));
      const body = JSON.stringify({ Results: results });
      const reply = { id: message.id, type: 2, message: { statusCode: 200, headers: {}, body } };
      setTimeout(() => bridge.onMessageFromHost(JSON.stringify(reply)));
    },
    call: (name: string, args: unknown[], flags = 12): Promise<HostAnswer> =>
      new Promise((resolve) => {
        const id = ++lastId;
        waiting.set(id, resolve);
        const entry = [1, 1000, "", JSON.stringify([id, name, args, null, flags]), id];
        bridge.onMessageFromHost(JSON.stringify({ type: 3, message: { entries: [entry] } }));
      }),
  };
  (window as unknown as { _richApiNativeBridge: typeof bridge })._richApiNativeBridge = bridge;
};
