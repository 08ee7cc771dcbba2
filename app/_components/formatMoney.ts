/**
 * Money as it stands on a bill, in whatever the shop is paid in.
 *
 * @example formatMoney(72) // "72.00"
 */
export const formatMoney = (money: number) => money.toFixed(2);
