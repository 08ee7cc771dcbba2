import { z } from "zod";

/**
 * What the shop reckons with when it quotes.
 * `hourCost` is what an hour at the bench costs the shop (wages, rent, tools), in its currency; `margin` is the part of a
 * price, in percent, that is to be left over on average.
 */
export const shopSettingsSchema = z.strictObject({
  /** Stands at the head of what is printed. */
  name: z.string().trim().min(1).max(80).optional(),
  hourCost: z.number().min(0.01).max(10_000),
  margin: z.number().min(0).max(90),
});
export type ShopSettings = z.infer<typeof shopSettingsSchema>;
