// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/pty.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/ioctl.h>
#include <termios.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <condition_variable>
#include <cstdlib>
#include <deque>
#include <filesystem>
#include <mutex>
#include <system_error>
#include <thread>
#include <utility>

#include "reader/tester/descriptor.h"

namespace walkdown::trainer {
namespace {

using tester::Descriptor;
using Clock = std::chrono::steady_clock;
using std::chrono::milliseconds;

constexpr milliseconds kMostBehind{20};  // a busy machine must not make it send in bursts

Error io_error(const std::string& what) {
  return {Code::io, "cannot make the simulated tester",
          what + ": " + std::generic_category().message(errno), ""};
}

struct Pair {
  Descriptor master;
  Descriptor slave;  // kept open, so that the tester may speak before anyone listens
  std::string path;
};

Result<Pair> make_pair() {
  Pair pair;
  pair.master = Descriptor(::posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK | O_CLOEXEC));
  if (!pair.master) return io_error("no pseudo-terminal");
  std::array<char, 64> name{};
  if (::grantpt(pair.master.get()) != 0 || ::unlockpt(pair.master.get()) != 0 ||
      ::ptsname_r(pair.master.get(), name.data(), name.size()) != 0) {
    return io_error("pseudo-terminal");
  }
  pair.path = name.data();
  pair.slave = Descriptor(::open(name.data(), O_RDWR | O_NOCTTY | O_CLOEXEC));
  termios raw{};
  if (!pair.slave || ::tcgetattr(pair.slave.get(), &raw) != 0) return io_error(pair.path);
  ::cfmakeraw(&raw);
  if (::tcsetattr(pair.slave.get(), TCSANOW, &raw) != 0) return io_error(pair.path);
  return pair;
}

}  // namespace

struct TesterPty::State {
  std::mutex mutex;
  std::condition_variable changed;
  Pair pair;  // without descriptors while unplugged
  std::filesystem::path folder;
  std::string path;
  std::deque<std::string> queue;  // each with its line end
  bool first_is_cut = false;      // the first of the queue has been sent in part
  double lines_per_s = 0;
  Clock::time_point next_line;
  bool stop = false;
  std::thread sender;

  // Both with the mutex held.
  bool link_up() {
    std::error_code error;
    std::filesystem::remove(path, error);
    std::filesystem::create_symlink(pair.path, path, error);
    return !error;
  }
  bool send_first();
  void run();
};

// Writes what the terminal takes of the first line. False where it takes nothing now.
bool TesterPty::State::send_first() {
  std::string& line = queue.front();
  const ssize_t sent = ::write(pair.master.get(), line.data(), line.size());
  if (sent <= 0) return false;
  line.erase(0, static_cast<std::size_t>(sent));
  first_is_cut = !line.empty();
  if (first_is_cut) return false;
  queue.pop_front();
  if (lines_per_s > 0) {
    const auto gap = std::chrono::duration<double>(1 / lines_per_s);
    // What was overslept is made up for: at 4,000 lines a second, a wake-up that comes late by a
    // third of a line's time each would send a quarter too few.
    next_line = std::max(next_line, Clock::now() - kMostBehind) +
                std::chrono::duration_cast<Clock::duration>(gap);
  }
  if (queue.empty()) changed.notify_all();
  return true;
}

void TesterPty::State::run() {
  std::unique_lock lock(mutex);
  while (!stop) {
    if (queue.empty() || !pair.master) {
      changed.wait(lock);
    } else if (lines_per_s > 0 && Clock::now() < next_line) {
      changed.wait_until(lock, next_line);
    } else if (!send_first()) {
      changed.wait_for(lock, milliseconds(1));  // the reader is behind
    }
  }
}

TesterPty::TesterPty(std::unique_ptr<State> state) : state_(std::move(state)) {
  state_->sender = std::thread([state = state_.get()] { state->run(); });
}

Result<std::unique_ptr<TesterPty>> TesterPty::open(double lines_per_s) {
  auto state = std::make_unique<State>();
  state->lines_per_s = lines_per_s;
  Result<Pair> pair = make_pair();
  if (!pair) return pair.error();
  state->pair = *std::move(pair);
  std::error_code error;
  std::string folder = (std::filesystem::temp_directory_path(error) / "walkdown-XXXXXX").string();
  if (::mkdtemp(folder.data()) == nullptr) return io_error(folder);
  state->folder = folder;
  state->path = folder + "/tester";
  if (!state->link_up()) return io_error(state->path);
  return std::unique_ptr<TesterPty>(
      new TesterPty(std::move(state)));  // NOLINT: private constructor
}

TesterPty::~TesterPty() {
  (void)wait_until_read(milliseconds(2000));
  {
    const std::lock_guard lock(state_->mutex);
    state_->stop = true;
  }
  state_->changed.notify_all();
  state_->sender.join();
  std::error_code error;
  std::filesystem::remove_all(state_->folder, error);
}

const std::string& TesterPty::path() const { return state_->path; }

void TesterPty::send(std::vector<std::string> lines) {
  const std::lock_guard lock(state_->mutex);
  // While there was nothing to send, nothing was missed.
  if (state_->queue.empty()) state_->next_line = std::max(state_->next_line, Clock::now());
  for (std::string& line : lines) state_->queue.push_back(std::move(line) + "\r\n");
  state_->changed.notify_all();
}

void TesterPty::set_rate(double lines_per_s) {
  const std::lock_guard lock(state_->mutex);
  state_->lines_per_s = lines_per_s;
  state_->next_line = Clock::now();
  state_->changed.notify_all();
}

bool TesterPty::wait_until_read(milliseconds at_most) {
  const auto until = Clock::now() + at_most;
  // A byte is on its way for a moment, and counted nowhere: it must stay empty for a while, which a
  // busy machine stretches.
  int empty = 0;
  while (empty < 20) {
    {
      std::unique_lock lock(state_->mutex);
      const bool sent =
          state_->changed.wait_until(lock, until, [&] { return state_->queue.empty(); });
      if (!sent || !state_->pair.slave) return sent && state_->queue.empty();
      int unread = 0;
      const bool known = ::ioctl(state_->pair.slave.get(), FIONREAD, &unread) == 0;
      empty = known && unread == 0 ? empty + 1 : 0;
    }
    if (Clock::now() >= until) return false;
    std::this_thread::sleep_for(milliseconds(1));
  }
  return true;
}

std::size_t TesterPty::queued() const {
  const std::lock_guard lock(state_->mutex);
  return state_->queue.size();
}

void TesterPty::unplug() {
  const std::lock_guard lock(state_->mutex);
  std::error_code error;
  std::filesystem::remove(state_->path, error);
  // The rest of a line that was sent in part is lost, as with a real cable.
  if (std::exchange(state_->first_is_cut, false)) state_->queue.pop_front();
  state_->pair = Pair{};
  state_->changed.notify_all();
}

Done TesterPty::replug() {
  Result<Pair> pair = make_pair();
  if (!pair) return pair.error();
  const std::lock_guard lock(state_->mutex);
  state_->pair = *std::move(pair);
  if (!state_->link_up()) return io_error(state_->path);
  state_->changed.notify_all();
  return done();
}

}  // namespace walkdown::trainer
