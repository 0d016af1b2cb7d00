package hotidle.cli.live;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Makes a code of a few bytes from which nobody learns them who has not the secret.
 *
 * <pre>
 * Cipher   AES-128 in Galois/Counter mode (NIST SP 800-38D), tag of 96 bits: a code that is mistyped or of another secret opens nothing
 * Key      of this run: HMAC-SHA-256 of the salt under 32 random bytes that never leave the process and end with it;
 *          of a phrase: PBKDF2 (RFC 8018) with HMAC-SHA-256, {@link #ROUNDS} rounds, of phrase and salt. Both give key and initial
 *          vector, of which none is used twice, since each code has its own random salt
 * Written  salt, cipher text and tag in base 32 without letters that look like digits, in groups of four. All codes of as many bytes
 *          are as long, whatever stands in them, and the same bytes make another code each time
 * </pre>
 */
final class LessonSeal {

    private static final String DIGITS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int SALT = 8;
    private static final int TAG = 12;
    private static final int KEY = 16;
    private static final int VECTOR = 12;
    private static final int ROUNDS = 200_000;

    /** Makes key and initial vector for a salt. */
    private interface Secret {
        byte[] material(byte[] salt) throws GeneralSecurityException;
    }

    private final Secret secret;
    private final SecureRandom random = new SecureRandom();

    private LessonSeal(Secret secret) {
        this.secret = secret;
    }

    /** With a secret that ends with this run of the program. */
    static LessonSeal ofThisRun() {
        byte[] key = new byte[32];
        new SecureRandom().nextBytes(key);
        return new LessonSeal(salt -> {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return mac.doFinal(salt);
        });
    }

    /** With a phrase that somebody remembers; blanks around it and capitals do not count. */
    static LessonSeal of(String phrase) {
        char[] meant = phrase.strip().toLowerCase(Locale.ROOT).toCharArray();
        return new LessonSeal(salt -> SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                .generateSecret(new PBEKeySpec(meant, salt, ROUNDS, 8 * (KEY + VECTOR)))
                .getEncoded());
    }

    /** A code of some bytes. */
    String sealed(byte[] content) {
        byte[] salt = new byte[SALT];
        random.nextBytes(salt);
        try {
            byte[] closed = cipher(Cipher.ENCRYPT_MODE, salt).doFinal(content);
            return written(ByteBuffer.allocate(SALT + closed.length)
                    .put(salt)
                    .put(closed)
                    .array());
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("this Java has no AES-GCM", missing);
        }
    }

    /**
     * What a code was made of.
     *
     * @param length bytes that were sealed
     * @return empty where it is none, or of another secret
     */
    Optional<byte[]> opened(String code, int length) {
        Optional<byte[]> read = read(code, SALT + length + TAG);
        if (read.isEmpty()) {
            return Optional.empty();
        }
        try {
            byte[] salt = Arrays.copyOf(read.get(), SALT);
            return Optional.of(cipher(Cipher.DECRYPT_MODE, salt).doFinal(read.get(), SALT, length + TAG));
        } catch (AEADBadTagException other) {
            return Optional.empty();
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("this Java has no AES-GCM", missing);
        }
    }

    private Cipher cipher(int mode, byte[] salt) throws GeneralSecurityException {
        byte[] material = secret.material(salt);
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(
                mode, new SecretKeySpec(material, 0, KEY, "AES"), new GCMParameterSpec(8 * TAG, material, KEY, VECTOR));
        return cipher;
    }

    private static int digits(int bytes) {
        return (8 * bytes + 4) / 5;
    }

    private static String written(byte[] bytes) {
        String number = new BigInteger(1, bytes).toString(32);
        StringBuilder code = new StringBuilder("0".repeat(digits(bytes.length) - number.length()));
        number.chars().map(digit -> DIGITS.charAt(Character.digit(digit, 32))).forEach(d -> code.append((char) d));
        return code.toString().replaceAll("(.{4})(?=.)", "$1-");
    }

    /** Small letters, blanks and letters for the digits that they look like are read as meant. */
    private static Optional<byte[]> read(String code, int length) {
        String meant = code.toUpperCase(Locale.ROOT)
                .replaceAll("[\\s-]", "")
                .replace('O', '0')
                .replaceAll("[IL]", "1");
        if (meant.length() != digits(length) || !meant.chars().allMatch(digit -> DIGITS.indexOf(digit) >= 0)) {
            return Optional.empty();
        }
        BigInteger number = BigInteger.ZERO;
        for (byte digit : meant.getBytes(StandardCharsets.US_ASCII)) {
            number = number.shiftLeft(5).add(BigInteger.valueOf(DIGITS.indexOf(digit)));
        }
        if (number.bitLength() > 8 * length) {
            return Optional.empty();
        }
        byte[] bytes = number.toByteArray();
        byte[] whole = new byte[length];
        int kept = Math.min(bytes.length, length);
        System.arraycopy(bytes, bytes.length - kept, whole, length - kept, kept);
        return Optional.of(whole);
    }
}
