package org.marktwice.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LearnerNameTest {
    @ParameterizedTest
    @CsvSource({
        "P07, p07",
        "P07, ' P07 '",
        "Ann Lee, ann  lee",
        "Jos\u00e9, Jose\u0301",
        "Ann Lee, Ann\u00a0Lee\u3000",
        "P07, \u200fP07\u200b"
    })
    void isTheSameHoweverItWasTyped(String one, String other) {
        assertThat(LearnerName.key(other)).isEqualTo(LearnerName.key(one));
    }

    @Test
    void othersAreOthers() {
        assertThat(LearnerName.key("P07")).isNotEqualTo(LearnerName.key("P7"));
        assertThat(LearnerName.key("Jose")).isNotEqualTo(LearnerName.key("Jos\u00e9"));
    }
}
