const unusedAbilities = [
  "accelerometer",
  "camera",
  "display-capture",
  "geolocation",
  "gyroscope",
  "hid",
  "magnetometer",
  "microphone",
  "midi",
  "payment",
  "serial",
  "usb",
];

/**
 * The headers that every answer carries and that do not depend on the request.
 *
 * Referrer-Policy is `same-origin` and not `no-referrer`, because under the latter browsers send `Origin: null`
 * with our own forms, and those are refused as foreign. A photo chosen through a file field needs no camera
 * permission, so the camera stays off.
 *
 * Source: Fetch standard, 'Origin header' (referrer policy and null); W3C Permissions Policy.
 */
export const safetyHeaders: Readonly<Record<string, string>> = {
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "same-origin",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Permissions-Policy": unusedAbilities.map((ability) => `${ability}=()`).join(", "),
};
