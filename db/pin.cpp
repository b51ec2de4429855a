#include "db/pin.h"

#include <sodium.h>

#include <QFile>
#include <QSaveFile>
#include <array>

#include "db/refuse.h"
#include "db/sql/connection.h"

namespace wm::db {

namespace {

constexpr std::int64_t longest_wait = 15 * 60;

ledger::LockCost cost(const StoreOptions& options) {
  const ledger::LockCost usual = ledger::usual_cost();
  return {options.pin_operations ? options.pin_operations : usual.operations,
          options.pin_memory ? options.pin_memory : usual.memory};
}

/// The hash, and the sealed key.
std::pair<std::string, std::string> parts(const std::string& kept) {
  const std::size_t line = kept.find('\n');
  if (line == std::string::npos) return {kept, ""};
  return {kept.substr(0, line), kept.substr(line + 1)};
}

}  // namespace

Expected<NewPin> new_pin(const std::string& pin, const StoreOptions& options) {
  const bool digits = std::all_of(pin.begin(), pin.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!digits || pin.size() < 4 || pin.size() > 12)
    return refuse("pin", "A PIN is 4 to 12 digits.", "Choose one of digits alone, that is no date of yours.");
  std::array<char, crypto_pwhash_STRBYTES> hash;
  if (crypto_pwhash_str_alg(hash.data(), pin.data(), pin.size(), cost(options).operations,
                            cost(options).memory, crypto_pwhash_ALG_ARGON2ID13) != 0)
    return refuse("pin", "There is not enough memory to keep a PIN safely.",
                  "Close other programs and try again.");
  const auto key = ledger::SigningKey::random();
  return ledger::seal(key.seed(), pin, options.secret, cost(options)).map([&](const std::string& sealed) {
    return NewPin{std::string(hash.data()) + "\n" + sealed, ledger::to_hex(key.public_key())};
  });
}

bool pin_fits(const std::string& pin, const std::string& kept) {
  return crypto_pwhash_str_verify(parts(kept).first.c_str(), pin.data(), pin.size()) == 0;
}

std::optional<ledger::SigningKey> key_of(const std::string& pin, const std::string& kept,
                                         const StoreOptions& options) {
  const std::string sealed = parts(kept).second;
  if (sealed.empty()) return std::nullopt;
  auto key = ledger::open(sealed, pin, options.secret);
  return key ? std::optional(std::move(*key)) : std::nullopt;
}

Expected<void> PinDelay::check(Instant now) const {
  // A clock set back must not lock the station for longer than the wait itself.
  if (now >= until_ || now < from_) return {};
  return refuse("pin", "Too many wrong PINs here.",
                "Wait " + std::to_string(until_.seconds - now.seconds) + " seconds, then try again.");
}

PinDelay::PinDelay(std::string file) : file_(std::move(file)) {
  QFile kept(text(file_));
  if (file_.empty() || !kept.open(QIODevice::ReadOnly)) return;
  const QList<QByteArray> said = kept.readLine(100).trimmed().split(' ');
  if (said.size() != 3) return;
  const qlonglong from = said[1].toLongLong(), until = said[2].toLongLong();
  // Nobody is kept out for longer by what stands in a file.
  if (from < 0 || until < from || until - from > longest_wait) return;
  wrong_ = std::clamp(said[0].toInt(), 0, 1000);
  from_ = {from};
  until_ = {until};
}

/// The file is a station's own: another station's wrong PINs are no matter here.
void PinDelay::keep() const {
  if (file_.empty()) return;
  QSaveFile kept(text(file_));
  if (!kept.open(QIODevice::WriteOnly)) return;
  kept.write(QByteArray::number(wrong_) + ' ' + QByteArray::number(static_cast<qlonglong>(from_.seconds)) +
             ' ' + QByteArray::number(static_cast<qlonglong>(until_.seconds)) + '\n');
  kept.commit();
}

void PinDelay::right() {
  if (wrong_ == 0) return;
  wrong_ = 0;
  from_ = until_ = {};
  keep();
}

void PinDelay::wrong(Instant now) {
  ++wrong_;
  if (wrong_ < 3) return keep();
  const std::int64_t wait = std::min<std::int64_t>(longest_wait, 5ll << std::min(wrong_ - 3, 8));
  from_ = now;
  until_ = now + wait;
  keep();
}

}  // namespace wm::db
